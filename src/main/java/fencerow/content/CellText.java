package fencerow.content;

/**
 * How a text stands in a cell of a file that spreadsheet programs open. One that starts like a formula would be run
 * there, so it gets an apostrophe before it; reading takes exactly one away.
 */
final class CellText {
    private static final String FORMULA_STARTS = "=+-@\t'";

    private CellText() {}

    /** As it is written. */
    static String written(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    /** As it was meant. */
    static String taken(String cell) {
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}

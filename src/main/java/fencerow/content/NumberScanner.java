package fencerow.content;

/** Takes the numbers of a drawing's attribute one by one, as SVG separates them: by blanks, one comma, or nothing. */
final class NumberScanner {
    /** The largest number that makes sense in a drawing. */
    private static final double LARGEST = 100_000;

    private final String text;
    private int at;

    NumberScanner(String text) {
        this.text = text;
    }

    /** Whether nothing is left. */
    boolean atEnd() {
        skipBlanks();
        return at == text.length();
    }

    /** Whether a number comes next. */
    boolean atNumber() {
        skipBlanks();
        return at < text.length() && "+-.0123456789".indexOf(text.charAt(at)) >= 0;
    }

    /** The next character, taken. */
    char take() {
        skipBlanks();
        return text.charAt(at++);
    }

    /** The next number, with the comma after it. @throws IllegalArgumentException if there is none */
    double number() {
        skipBlanks();
        int start = at;
        if (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        boolean digits = skipDigits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits |= skipDigits();
        }
        if (!digits) {
            throw new IllegalArgumentException("there is no number at [" + rest(start) + "]; write one, such as 12.5");
        }
        skipExponent();
        double number = Double.parseDouble(text.substring(start, at));
        if (!(Math.abs(number) <= LARGEST)) {
            throw new IllegalArgumentException("the number [" + text.substring(start, at) + "] is too large; "
                    + (int) LARGEST + " is the most");
        }
        skipComma();
        return number;
    }

    /** The next flag of an arc, 0 or 1, not always set apart. @throws IllegalArgumentException if there is none */
    boolean flag() {
        skipBlanks();
        if (at == text.length() || "01".indexOf(text.charAt(at)) < 0) {
            throw new IllegalArgumentException("there is no flag at [" + rest(at) + "]; write 0 or 1");
        }
        boolean set = text.charAt(at++) == '1';
        skipComma();
        return set;
    }

    /** What is left, shortened. */
    String rest() {
        return rest(at);
    }

    private String rest(int from) {
        String left = text.substring(from);
        return left.length() > 12 ? left.substring(0, 12) + ".." : left;
    }

    private boolean skipDigits() {
        int start = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at > start;
    }

    private void skipExponent() {
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            int before = at++;
            if (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            if (!skipDigits()) {
                at = before;
            }
        }
    }

    private void skipBlanks() {
        while (at < text.length() && " \t\n\r".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private void skipComma() {
        skipBlanks();
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
        }
    }
}

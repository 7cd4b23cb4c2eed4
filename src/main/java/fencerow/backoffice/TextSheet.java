package fencerow.backoffice;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Plain text for a terminal: headings, sentences that are broken at the right edge, and aligned rows. */
final class TextSheet {
    private static final int WIDTH = 100;
    private static final int MOST_COLUMN = 56;
    private static final String GAP = "  ";

    private final StringBuilder text = new StringBuilder();

    /** A line at the left edge with an empty one above. */
    TextSheet heading(String words) {
        if (!text.isEmpty()) {
            text.append('\n');
        }
        return line(0, words);
    }

    /** Words that go on under themselves where they reach the right edge. */
    TextSheet line(int indent, String words) {
        return broken(indent, indent, words);
    }

    /** The same with a dash before. */
    TextSheet point(int indent, String words) {
        return broken(indent, indent + 2, "- " + words);
    }

    private TextSheet broken(int indent, int hanging, String words) {
        BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
        breaks.setText(words);
        StringBuilder row = new StringBuilder(" ".repeat(indent));
        int from = 0;
        for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
            String piece = words.substring(from, to);
            if (row.length() + piece.stripTrailing().length() > WIDTH && !row.toString().isBlank()) {
                end(row);
                row = new StringBuilder(" ".repeat(hanging));
            }
            row.append(piece);
            from = to;
        }
        return end(row);
    }

    /** Rows whose cells stand under each other; no cell is broken. */
    TextSheet rows(int indent, List<List<String>> rows) {
        List<Integer> widths = new ArrayList<>();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                if (i == widths.size()) {
                    widths.add(0);
                }
                widths.set(i, Math.max(widths.get(i), Math.min(MOST_COLUMN, row.get(i).length())));
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(" ".repeat(indent));
            for (int i = 0; i < row.size(); i++) {
                String cell = row.get(i);
                line.append(cell).append(" ".repeat(Math.max(0, widths.get(i) - cell.length()))).append(GAP);
            }
            end(line);
        }
        return this;
    }

    private TextSheet end(StringBuilder row) {
        text.append(row.toString().stripTrailing()).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

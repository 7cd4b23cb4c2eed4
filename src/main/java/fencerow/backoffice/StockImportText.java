package fencerow.backoffice;

import fencerow.backoffice.document.StockImportDocument;
import fencerow.content.StockFile;

/** What an import came to, as text. */
final class StockImportText {
    private StockImportText() {}

    static String of(StockImportDocument document) {
        var text = new StringBuilder();
        document.columns().forEach(column -> text.append("column [").append(column.name()).append("] ")
                .append(column.means().isEmpty() ? "left out" : "means [" + column.means() + "]").append('\n'));
        document.problems().forEach(each -> text.append(line(document.file(), each, "")));
        if (document.problems().size() >= StockFile.MOST_PROBLEMS) {
            text.append("... and more\n");
        }
        document.warnings().forEach(each -> text.append(line(document.file(), each, "warning: ")));
        text.append(document.rows()).append(" rows, ").append(document.wrong()).append(" wrong: ")
                .append(document.added()).append(" new, ").append(document.changed()).append(" changed, ")
                .append(document.same()).append(" as before, ").append(document.removed()).append(" taken out\n");
        text.append(document.kept() ? "Taken into the stock book."
                : document.dryRun() ? "Nothing was changed: this was a dry run."
                : "Nothing was changed. Correct the file, or take in only what is good with --partly.");
        return text.append('\n').toString();
    }

    private static String line(String file, StockImportDocument.RowEntry entry, String kind) {
        return file + ":" + entry.row() + ": " + kind + entry.what() + "; " + entry.whatToDo() + "\n";
    }
}

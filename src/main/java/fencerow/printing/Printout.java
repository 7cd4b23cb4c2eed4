package fencerow.printing;

import fencerow.checklist.ChecklistLine;
import java.util.List;

/**
 * Pages ready to print.
 *
 * @param pdf   tagged, with all fonts embedded
 * @param pages how many
 * @param lines of the list, each with the place it has on these pages
 */
public record Printout(byte[] pdf, int pages, List<ChecklistLine> lines) {
    /** Copies the lines. */
    public Printout {
        lines = List.copyOf(lines);
    }
}

package fencerow.printing;

import fencerow.checklist.ChecklistLine;
import fencerow.explainers.Library;
import fencerow.printing.SheetValues.Setting;
import fencerow.wording.Phrases;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.w3c.dom.Document;

/**
 * Makes a shopper's pages: fills the owner's templates, works out how many lines of the list one page holds, and sets
 * the pages as tagged PDF. One call at a time, others wait; not for the thread that draws the screen.
 */
public final class Paper {
    /** More rows than any page holds. */
    private static final int MOST_ROWS = 64;

    private final Templates templates;
    private final Typesetter typesetter;
    private final int mostLines;
    private final int mostSigns;

    private Paper(Templates templates, Typesetter typesetter, int mostLines, int mostSigns) {
        this.templates = templates;
        this.typesetter = typesetter;
        this.mostLines = mostLines;
        this.mostSigns = mostSigns;
    }

    /**
     * Reads the templates.
     *
     * @param folder    of the showroom's templates and style sheet
     * @param mostLines the most lines on page one, even where it would hold more
     * @param mostSigns the most signs in its box
     * @param warnings  is told what the renderer finds fault with, in its own words
     * @throws java.io.UncheckedIOException if a file is missing
     * @throws IllegalArgumentException     if a template is broken
     */
    public static Paper of(Path folder, int mostLines, int mostSigns, Consumer<String> warnings) {
        return new Paper(Templates.read(folder), new Typesetter(warnings), mostLines, mostSigns);
    }

    /**
     * The lines of the list with the places they have on paper: as many on page one as it holds in ordinary type in
     * this language and on this size of paper, those with the most at stake first. Large print has the same lines.
     */
    public synchronized List<ChecklistLine> place(Handout handout, Phrases phrases, PageFormat format) {
        return fit(handout, phrases, format.ordinary()).lines();
    }

    /**
     * The sheets in this order as one document. The list's lines are placed as by {@link #place}; sheets that would
     * have nothing on them are left out.
     *
     * @throws IllegalArgumentException if a template asks for words or values that do not exist, or does not give
     *                                  well-formed XHTML
     */
    public synchronized Printout print(Handout handout, Phrases phrases, PageFormat format, List<Sheet> sheets) {
        Setting list = fit(handout, phrases, format.ordinary());
        Setting setting = sheets.contains(Sheet.COMPARISON)
                ? fitComparison(handout, phrases, format.ordinary(), list)
                : list;
        try (Typesetter.Pages pages = set(handout, phrases, format, setting, sheets)) {
            return new Printout(pages.write(), pages.count(), setting.lines());
        }
    }

    /**
     * A paper for staff as one page, with as much of its lists as that holds.
     *
     * @throws IllegalArgumentException as for a visit's sheets
     */
    public synchronized Printout print(WorkingPaper work, Handout.Imprint imprint, Library library, Phrases phrases,
            PageFormat format) {
        var nobody = new Handout(imprint, "", List.of(), List.of(), List.of(), List.of(), library, Optional.empty());
        var values = new SheetValues(nobody, phrases, format, new Setting(List.of(), Map.of()));
        int fits = 0;
        int most = Math.min(work.longest(), MOST_ROWS);
        while (fits < most) {
            int half = (fits + most + 1) / 2;
            try (Typesetter.Pages pages = set(work, values, library, half, phrases)) {
                if (pages.count() == 1) {
                    fits = half;
                } else {
                    most = half - 1;
                }
            }
        }
        try (Typesetter.Pages pages = set(work, values, library, fits, phrases)) {
            return new Printout(pages.write(), pages.count(), List.of());
        }
    }

    private Typesetter.Pages set(WorkingPaper work, SheetValues frame, Library library, int rows, Phrases phrases) {
        Map<String, Object> values = frame.common();
        values.putAll(work.valuesUpTo(rows, phrases));
        Map<String, Object> sheet =
                Map.of("name", work.template(), "body", templates.fill(work.template(), values));
        Document document = Xhtml.parse(templates.fill("page", frame.page(List.of(sheet), templates.css())));
        return typesetter.set(document, library.pictures());
    }

    /** Where the lines go and how each is set, in ordinary print. */
    Setting fit(Handout handout, Phrases phrases, PageFormat format) {
        return new Fit(handout.lines(), setting -> set(handout, phrases, format, setting, List.of(Sheet.LIST)))
                .upTo(mostLines, mostSigns);
    }

    /** With as many must-have rows as keep the comparison on one page, also where it begins a hair lower: not first. */
    private Setting fitComparison(Handout handout, Phrases phrases, PageFormat format, Setting setting) {
        for (Setting next = setting; ; next = next.withOneMustRowLess()) {
            try (Typesetter.Pages pages =
                    set(handout, phrases, format, next, List.of(Sheet.COMPARISON, Sheet.COMPARISON))) {
                if (pages.count() == 2 || next.mustRows() == 0) {
                    return next;
                }
            }
        }
    }

    Typesetter.Pages set(
            Handout handout, Phrases phrases, PageFormat format, Setting setting, List<Sheet> sheets) {
        var values = new SheetValues(handout, phrases, format, setting);
        return typesetter.set(document(values, sheets), handout.library().pictures());
    }

    private Document document(SheetValues values, List<Sheet> sheets) {
        List<Map<String, Object>> bodies = sheets.stream()
                .filter(values::hasContent)
                .map(sheet -> Map.<String, Object>of(
                        "name", sheet.id(), "body", templates.fill(sheet.id(), values.of(sheet))))
                .toList();
        return Xhtml.parse(templates.fill("page", values.page(bodies, templates.css())));
    }
}

package fencerow.backoffice;

import fencerow.content.Content;
import fencerow.printing.Handout;
import fencerow.printing.Handouts;
import fencerow.printing.PageFormat;
import fencerow.printing.Paper;
import fencerow.printing.Printout;
import fencerow.printing.Sheet;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** Sets visits' pages as PDF, with the words of a showroom's content and the templates of its configuration. */
public final class PrintShop {
    private static final System.Logger LOG = System.getLogger(PrintShop.class.getName());

    private final Content content;
    private final Paper paper;
    private final Clock clock;

    private PrintShop(Content content, Paper paper, Clock clock) {
        this.content = content;
        this.paper = paper;
        this.clock = clock;
    }

    /**
     * Opens it.
     *
     * @param config the showroom's configuration, with the templates in its folder {@code paper}
     * @param clock  dates the pages
     * @throws java.io.UncheckedIOException if a template is missing
     * @throws IllegalArgumentException     if a template is broken
     */
    public static PrintShop of(Content content, Path config, Clock clock) {
        var settings = content.settings().paper();
        Paper paper = Paper.of(config.resolve("paper"), settings.pageOne(), settings.signs(), warning ->
                LOG.log(System.Logger.Level.WARNING, warning));
        return new PrintShop(content, paper, clock);
    }

    /** Sets pages for nobody, so that the first shopper's do not wait for faces and styles to be read. */
    public void warmUp() {
        try {
            String language = content.settings().languages().get(0);
            print(Visit.NEW, language, content.settings().metric(), format(false), List.of(Sheet.LIST));
        } catch (IllegalArgumentException e) {
            // Who prints is told what the template lacks; here it is noted early.
            LOG.log(System.Logger.Level.WARNING, "the list cannot be set: " + e.getMessage());
        }
    }

    /** The showroom's size of paper, with ordinary or large type. */
    public PageFormat format(boolean largePrint) {
        return new PageFormat(
                content.settings().paper().letter() ? PageFormat.Size.LETTER : PageFormat.Size.A4, largePrint);
    }

    /**
     * Sets pages of a visit.
     *
     * @param language of the words; one that is offered
     * @param metric   whether amounts are in metric units
     * @param sheets   in this order; those with nothing on them are left out
     * @throws IllegalArgumentException if a template asks for what does not exist
     */
    public Printout print(Visit visit, String language, boolean metric, PageFormat format, List<Sheet> sheets) {
        Texts texts = content.getTexts(language);
        var phrases = new Phrases(texts, new Quantities(texts.locale(), metric)::show);
        var imprint = new Handout.Imprint(
                content.settings().name(), content.settings().isDemo(), LocalDate.now(clock), content.version());
        Handout handout =
                new Handouts(content.showroom(), phrases, content.getLibrary(language), imprint).of(visit);
        return paper.print(handout, phrases, format, sheets);
    }
}

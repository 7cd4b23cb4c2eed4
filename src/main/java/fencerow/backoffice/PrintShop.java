package fencerow.backoffice;

import fencerow.content.Content;
import fencerow.printing.Handout;
import fencerow.printing.Handouts;
import fencerow.printing.PageFormat;
import fencerow.printing.Paper;
import fencerow.printing.Printout;
import fencerow.printing.Sheet;
import fencerow.printing.WorkingPaper;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

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
        Phrases phrases = phrases(language, metric);
        Handout handout =
                new Handouts(content.showroom(), phrases, content.getLibrary(language), imprint()).of(visit);
        return paper.print(handout, phrases, format, sheets);
    }

    /**
     * Sets a paper for staff.
     *
     * @param work makes it in the words of the language
     * @throws IllegalArgumentException if a template asks for what does not exist
     */
    public Printout print(
            Function<Phrases, WorkingPaper> work, String language, boolean metric, PageFormat format) {
        Phrases phrases = phrases(language, metric);
        return paper.print(work.apply(phrases), imprint(), content.getLibrary(language), phrases, format);
    }

    /** The same shop over another stock. */
    public PrintShop with(Showroom showroom) {
        return new PrintShop(content.with(showroom), paper, clock);
    }

    /** What is in stock. */
    public Showroom showroom() {
        return content.showroom();
    }

    private Phrases phrases(String language, boolean metric) {
        Texts texts = content.getTexts(language);
        return new Phrases(texts, new Quantities(texts.locale(), metric)::show);
    }

    private Handout.Imprint imprint() {
        return new Handout.Imprint(
                content.settings().name(), content.settings().isDemo(), LocalDate.now(clock), content.version());
    }
}

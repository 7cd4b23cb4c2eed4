package fencerow.kiosk;

import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.explainers.Library;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Search;
import fencerow.wording.PseudoLocale;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The demo showroom as the kiosk shows it, in English and in the pseudo-locale. */
public final class Rooms {
    /** The PIN of its staff door. */
    public static final String PIN = "2468";
    /** A language in which every word has accents and is some 40 % longer. */
    public static final String PSEUDO = PseudoLocale.LANGUAGE;

    private static final Premises PREMISES = read();

    private Rooms() {}

    /** The demo showroom; lists go nowhere. */
    public static Premises premises() {
        return PREMISES;
    }

    private static Premises read() {
        Reading<Content> reading =
                new ContentReader().read(Path.of("content"), Path.of("kiosk-config"), Optional.empty());
        if (reading instanceof Reading.Good<Content> good) {
            Content content = good.content().withPseudoLocale();
            return new Premises(content.showroom(), content.texts(), content.libraries(), content.settings(),
                    titlesOf(content.libraries()), (visit, comfort, parts) -> new ListPrinter.Printed.OnPaper(1),
                    content.version(), List.of(), Optional::empty,
                    ended -> { });
        }
        throw new AssertionError("the shipped content has mistakes: " + reading);
    }

    /** A search over titles: enough to show hits; how good the real one is, its own tests tell. */
    private static Search titlesOf(Map<String, Library> libraries) {
        return (language, words) -> libraries.get(language).explainers().stream()
                .filter(each -> each.title().toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT)))
                .map(each -> new Search.Hit(
                        Search.Kind.TOPIC, each.topic().value(), each.title(), each.summary()))
                .toList();
    }
}

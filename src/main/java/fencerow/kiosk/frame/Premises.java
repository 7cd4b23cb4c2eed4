package fencerow.kiosk.frame;

import fencerow.desk.Counts;
import fencerow.desk.Settings;
import fencerow.desk.StockDesk;
import fencerow.explainers.Library;
import fencerow.visit.Showroom;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Everything a kiosk shows from. Immutable; new content or stock makes a new one.
 *
 * @param showroom       stock, questions, quiz and list
 * @param texts          the words, by language
 * @param libraries      the explainers, by language
 * @param settings       what the showroom sets
 * @param search         over the explainers and trade words
 * @param printer        of lists
 * @param contentVersion printed on lists and shown to staff
 * @param problems       what is wrong with newer content that is therefore not shown; for staff
 * @param counts         get what a visit came to when it has ended, and are what staff see
 * @param comeBack       keeps visits for who wants to come back; empty where that is not offered
 * @param desk           where staff change the stock; empty where there is no database
 * @param pictures       photographs of units
 */
public record Premises(
        Showroom showroom,
        Map<String, Texts> texts,
        Map<String, Library> libraries,
        Settings settings,
        Search search,
        ListPrinter printer,
        String contentVersion,
        List<String> problems,
        Counts counts,
        Optional<ComeBack> comeBack,
        Optional<StockDesk> desk,
        UnitPictures pictures) {
    /** One whose stock nobody changes. */
    public Premises(
            Showroom showroom,
            Map<String, Texts> texts,
            Map<String, Library> libraries,
            Settings settings,
            Search search,
            ListPrinter printer,
            String contentVersion,
            List<String> problems,
            Counts counts,
            Optional<ComeBack> comeBack) {
        this(showroom, texts, libraries, settings, search, printer, contentVersion, problems, counts, comeBack,
                Optional.empty(), UnitPictures.NONE);
    }

    /** @throws IllegalArgumentException if an offered language has no words or no explainers */
    public Premises {
        texts = Map.copyOf(texts);
        libraries = Map.copyOf(libraries);
        problems = List.copyOf(problems);
        for (String language : settings.languages()) {
            if (!texts.containsKey(language) || !libraries.containsKey(language)) {
                throw new IllegalArgumentException("language [" + language + "] is offered but has no "
                        + (texts.containsKey(language) ? "explainers" : "words") + "; add them or do not offer it");
            }
        }
    }

    /** The same, with newer content that is therefore not shown being wrong in these ways. */
    public Premises withProblems(List<String> others) {
        return new Premises(showroom, texts, libraries, settings, search, printer, contentVersion, others,
                counts, comeBack, desk, pictures);
    }

    /** The same with another stock, which may have problems of its own, and with where staff change it. */
    public Premises with(Showroom now, List<String> more, Optional<StockDesk> where, UnitPictures photographs) {
        List<String> all = new ArrayList<>(problems);
        all.addAll(more);
        return new Premises(now, texts, libraries, settings, search, printer, contentVersion, all, counts, comeBack,
                where, photographs);
    }

    /** Words in a language that is offered. */
    public Texts texts(String language) {
        return given(texts.get(language), language);
    }

    Library library(String language) {
        return given(libraries.get(language), language);
    }

    private static <T> T given(@Nullable T value, String language) {
        if (value == null) {
            throw new IllegalArgumentException("language [" + language + "] is not offered here");
        }
        return value;
    }
}

package fencerow.kiosk.frame;

import fencerow.desk.Settings;
import fencerow.desk.Tally;
import fencerow.explainers.Library;
import fencerow.visit.Showroom;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
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
 * @param journal        gets what a visit came to when it has ended
 * @param comeBack       keeps visits for who wants to come back; empty where that is not offered
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
        Consumer<Tally> journal,
        Optional<ComeBack> comeBack) {
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
                journal, comeBack);
    }

    /** The same with another stock, which may have problems of its own. */
    public Premises with(Showroom now, List<String> more) {
        List<String> all = new ArrayList<>(problems);
        all.addAll(more);
        return new Premises(
                now, texts, libraries, settings, search, printer, contentVersion, all, journal, comeBack);
    }

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

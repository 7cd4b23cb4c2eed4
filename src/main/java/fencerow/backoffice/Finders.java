package fencerow.backoffice;

import fencerow.content.Content;
import fencerow.explainers.Library;
import fencerow.search.Entry;
import fencerow.search.Finder;
import fencerow.search.Synonym;
import fencerow.visit.Showroom;
import fencerow.wording.PseudoLocale;
import fencerow.wording.SearchEntries;
import java.util.ArrayList;
import java.util.List;

/** Makes the search over everything that content has to say, in all its languages. */
public final class Finders {
    private Finders() {}

    /** A finder of the content; takes a while, so make it in the background. */
    public static Finder of(Content content) {
        Showroom showroom = content.showroom();
        List<Entry> entries = new ArrayList<>();
        List<Synonym> synonyms = new ArrayList<>();
        List<String> languages = content.settings().languages().stream()
                .filter(language -> !language.equals(PseudoLocale.LANGUAGE))
                .toList();
        for (String language : languages) {
            List<Library> others = languages.stream()
                    .filter(other -> !other.equals(language))
                    .map(content::getLibrary)
                    .toList();
            var made = new SearchEntries(
                    content.getTexts(language),
                    content.getLibrary(language),
                    others,
                    showroom.catalogue(),
                    showroom.units(),
                    showroom.questionnaire().jobs(),
                    showroom.quiz().questions(),
                    showroom.workbook().sheets());
            entries.addAll(made.entries());
            synonyms.addAll(made.synonyms());
        }
        return Finder.of(entries, synonyms, content.aliases());
    }
}

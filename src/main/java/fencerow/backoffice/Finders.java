package fencerow.backoffice;

import fencerow.content.Content;
import fencerow.search.Finder;
import fencerow.visit.Showroom;
import fencerow.wording.PseudoLocale;
import fencerow.wording.SearchEntries;
import java.util.List;

/** Makes the search over everything that content has to say, in all its languages. */
public final class Finders {
    private Finders() {}

    /** A finder of the content; takes a while, so make it in the background. */
    public static Finder of(Content content) {
        List<SearchEntries> sources = sources(content);
        return Finder.of(
                sources.stream().flatMap(made -> made.entries().stream()).toList(),
                sources.stream().flatMap(made -> made.synonyms().stream()).toList(),
                content.aliases());
    }

    /** What can be found in each language offered. */
    public static List<SearchEntries> sources(Content content) {
        Showroom showroom = content.showroom();
        List<String> languages = content.settings().languages().stream()
                .filter(language -> !language.equals(PseudoLocale.LANGUAGE))
                .toList();
        return languages.stream()
                .map(language -> new SearchEntries(
                        content.getTexts(language),
                        content.getLibrary(language),
                        languages.stream()
                                .filter(other -> !other.equals(language))
                                .map(content::getLibrary)
                                .toList(),
                        showroom.catalogue(),
                        showroom.units(),
                        showroom.questionnaire().jobs(),
                        showroom.quiz().questions(),
                        showroom.workbook().sheets()))
                .toList();
    }
}

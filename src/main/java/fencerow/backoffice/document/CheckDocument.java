package fencerow.backoffice.document;

import fencerow.content.Content;
import fencerow.content.Kind;
import fencerow.content.Problem;
import fencerow.content.Reading;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import fencerow.visit.Showroom;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What {@code check} prints.
 *
 * @param good     whether content and configuration can be used
 * @param problems why not, every one, by file and line
 * @param warnings what looks wrong and can be used all the same, by file and line
 * @param summary  with {@code --summary}, of content that can be used; else null
 */
public record CheckDocument(
        boolean good, List<ProblemEntry> problems, List<ProblemEntry> warnings, Optional<Summary> summary) {
    /**
     * Something wrong in a file.
     *
     * @param file     as a person would name it
     * @param line     from 1
     * @param what     what is wrong
     * @param whatToDo how to put it right
     */
    public record ProblemEntry(String file, int line, String what, String whatToDo) {
        private static ProblemEntry of(Problem problem) {
            return new ProblemEntry(
                    problem.place().file(), problem.place().line(), problem.what(), problem.whatToDo());
        }
    }

    /**
     * What there is.
     *
     * @param version  changes whenever a source file does
     * @param languages offered
     * @param counts   of every kind of record
     * @param areas    how far each stop of the walk around a tractor is covered, in that order
     * @param translations how far each language with words of its own is translated, offered or not
     * @param legibility how easy the longer texts of each language offered are to read
     */
    public record Summary(
            String version,
            List<String> languages,
            List<Count> counts,
            List<Area> areas,
            List<TranslationEntry> translations,
            List<LegibilityEntry> legibility) {}

    /**
     * How far a language is translated.
     *
     * @param language   as a tag
     * @param current    words and articles that translate the present original
     * @param stale      that translate an original changed since
     * @param unaccepted of which nobody has said what they translate
     * @param missing    without a translation
     */
    public record TranslationEntry(String language, int current, int stale, int unaccepted, int missing) {}

    /**
     * How many records of a kind there are.
     *
     * @param kind  such as {@code feature} or {@code checklist-line}
     * @param count of them
     */
    public record Count(String kind, int count) {}

    /**
     * How far one stop is covered.
     *
     * @param stop          its id
     * @param features      looked for there
     * @param explained     of these, with an explainer
     * @param asked         of these, with a quiz question
     * @param listed        of these, with a checklist line
     * @param addable       of these, that some add-on gives
     * @param checklistLines about anything at this stop
     */
    public record Area(
            String stop, int features, int explained, int asked, int listed, int addable, int checklistLines) {}

    /** Writes down what a reading came to. */
    public static CheckDocument of(Reading<Content> reading, boolean summary) {
        List<Problem> problems = reading instanceof Reading.Bad<Content> bad ? bad.problems() : List.of();
        Optional<Content> content =
                reading instanceof Reading.Good<Content> good ? Optional.of(good.content()) : Optional.empty();
        return new CheckDocument(
                content.isPresent(),
                problems.stream().map(ProblemEntry::of).toList(),
                reading.warnings().stream().map(ProblemEntry::of).toList(),
                content.filter(any -> summary).map(CheckDocument::summary));
    }

    private static Summary summary(Content content) {
        return new Summary(
                content.version(),
                content.settings().languages(),
                Arrays.stream(Kind.values())
                        .map(kind -> new Count(Words.id(kind), content.places().ids(kind).size()))
                        .toList(),
                areas(content),
                content.translations().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(each -> new TranslationEntry(
                                each.getKey(), each.getValue().current(), each.getValue().stale(),
                                each.getValue().unaccepted(), each.getValue().missing()))
                        .toList(),
                content.legibility().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .flatMap(each -> LegibilityEntry.of(each.getKey(), each.getValue()).stream())
                        .toList());
    }

    private static List<Area> areas(Content content) {
        Showroom showroom = content.showroom();
        Set<TopicId> explained = new HashSet<>();
        content.getLibrary(content.settings().languages().get(0))
                .explainers()
                .forEach(explainer -> explained.add(explainer.topic()));
        Set<FeatureId> asked = new HashSet<>();
        showroom.quiz().questions().forEach(question -> question.feature().ifPresent(asked::add));
        Set<FeatureId> listed = new HashSet<>();
        showroom.composer().templates().forEach(line -> line.feature().ifPresent(listed::add));
        List<Area> areas = new ArrayList<>();
        for (Stop stop : Stop.values()) {
            List<Feature> here = showroom.catalogue().features().stream()
                    .filter(feature -> feature.stop() == stop)
                    .toList();
            areas.add(new Area(
                    stop.id(),
                    here.size(),
                    count(here, feature -> explained.contains(new TopicId(feature.id().value()))),
                    count(here, feature -> asked.contains(feature.id())),
                    count(here, feature -> listed.contains(feature.id())),
                    count(here, feature -> !showroom.catalogue().addOnsFor(feature.id()).isEmpty()),
                    (int) showroom.composer().templates().stream().filter(line -> line.stop() == stop).count()));
        }
        return List.copyOf(areas);
    }

    private static int count(List<Feature> features, Predicate<Feature> test) {
        return (int) features.stream().filter(test).count();
    }
}

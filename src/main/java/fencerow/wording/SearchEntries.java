package fencerow.wording;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.GlossaryWord;
import fencerow.explainers.Inline;
import fencerow.explainers.Library;
import fencerow.needs.Job;
import fencerow.quiz.QuizQuestion;
import fencerow.search.Entry;
import fencerow.search.Kind;
import fencerow.search.Passage;
import fencerow.search.Synonym;
import fencerow.search.Tag;
import fencerow.stock.Attachment;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import fencerow.terms.TopicId;
import fencerow.visit.Worksheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What can be found in one language, made of everything the showroom has to say.
 *
 * @param texts     the words of the language
 * @param library   its explainers and glossary
 * @param others    glossaries of other languages, whose words lead to the same things
 * @param catalogue features and attachments
 * @param units     the stock
 * @param jobs      the jobs that can be asked for
 * @param questions the quiz
 * @param worksheets calculations a shopper can do
 */
public record SearchEntries(
        Texts texts,
        Library library,
        List<Library> others,
        Catalogue catalogue,
        List<Unit> units,
        List<Job> jobs,
        List<QuizQuestion> questions,
        List<Worksheet> worksheets) {
    private static final double CORE = 1.15;
    private static final double EXPLAINER = 1;
    private static final double WORD = 0.9;
    private static final double JOB = 0.9;
    private static final double ATTACHMENT = 0.75;
    private static final double UNIT = 0.55;
    private static final double QUIZ = 0.35;
    private static final double CALCULATION = 0.5;
    private static final double WATTS_A_HORSEPOWER = 745.69987158227;

    /** Copies the lists. */
    public SearchEntries {
        others = List.copyOf(others);
        units = List.copyOf(units);
        jobs = List.copyOf(jobs);
        questions = List.copyOf(questions);
        worksheets = List.copyOf(worksheets);
    }

    /** The entries, kind by kind. */
    public List<Entry> entries() {
        return Stream.of(
                        library.explainers().stream().map(this::explainer),
                        library.glossary().stream().map(this::word),
                        jobs.stream().map(this::job),
                        catalogue.items().stream()
                                .filter(Attachment.class::isInstance)
                                .map(item -> attachment((Attachment) item)),
                        units.stream().map(this::unit),
                        questions.stream().map(this::question),
                        worksheets.stream().map(this::calculation))
                .flatMap(entries -> entries)
                .toList();
    }

    /** Words of the glossary with what else people say, in every language there is. */
    public List<Synonym> synonyms() {
        return library.glossary().stream()
                .map(word -> new Synonym(word.word(), namesOf(word)))
                .toList();
    }

    /** What else the word is called, in this language and the others. */
    private List<String> namesOf(GlossaryWord word) {
        List<String> names = new ArrayList<>(word.also());
        for (Library other : others) {
            other.findWord(word.id()).ifPresent(foreign -> {
                names.add(foreign.word());
                names.addAll(foreign.also());
            });
        }
        return names;
    }

    private Entry explainer(Explainer explainer) {
        TopicId topic = explainer.topic();
        Optional<Feature> feature = catalogue.findFeature(new FeatureId(topic.value()));
        List<String> names = new ArrayList<>();
        List<String> related = new ArrayList<>();
        names.add(topic.value().replace('-', ' '));
        feature.ifPresent(each -> names.add(new Labels(texts).feature(each.id())));
        for (GlossaryWord word : library.glossary()) {
            if (word.topic().filter(topic::equals).isPresent()) {
                List<String> into = isNameOf(word, topic, explainer.title()) ? names : related;
                into.add(word.word());
                into.addAll(namesOf(word));
            }
        }
        return new Entry(Kind.EXPLAINER, topic.value(), library.language(), explainer.title(), names, related,
                passages(explainer), about(topic), Optional.empty(),
                feature.filter(Feature::core).isPresent() ? CORE : EXPLAINER);
    }

    /** Whether a trade word names the topic itself and not a part of it. */
    private static boolean isNameOf(GlossaryWord word, TopicId topic, String title) {
        Set<String> called = new HashSet<>(List.of(plain(topic.value()), plain(title)));
        return topic.value().startsWith(word.id())
                || word.id().startsWith(topic.value())
                || Stream.concat(Stream.of(word.word()), word.also().stream())
                        .anyMatch(name -> called.contains(plain(name)));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace('-', ' ').replaceAll("s\\b", "");
    }

    private static List<Passage> passages(Explainer explainer) {
        List<Passage> passages = new ArrayList<>();
        passages.add(Passage.of(explainer.summary()));
        String heading = "";
        List<String> words = new ArrayList<>();
        for (Block block : explainer.blocks()) {
            if (block instanceof Block.Heading next) {
                close(passages, heading, words);
                heading = next.words();
            } else {
                words.addAll(words(block));
            }
        }
        close(passages, heading, words);
        return passages;
    }

    private static void close(List<Passage> passages, String heading, List<String> words) {
        if (!words.isEmpty()) {
            passages.add(new Passage(heading, String.join("\n", words)));
            words.clear();
        }
    }

    private static List<String> words(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return List.of(words(paragraph.words()));
        }
        if (block instanceof Block.Points points) {
            return points.points().stream().map(SearchEntries::words).toList();
        }
        if (block instanceof Block.Table table) {
            return Stream.concat(Stream.of(table.head()), table.rows().stream())
                    .map(row -> String.join(", ", row))
                    .toList();
        }
        return List.of();
    }

    private static String words(List<Inline> words) {
        return words.stream().map(Inline::words).collect(Collectors.joining());
    }

    private Set<Tag> about(TopicId topic) {
        Set<Tag> tags = new HashSet<>();
        tags.add(Tag.topic(topic));
        library.find(topic).ifPresent(explainer -> tags.add(Tag.stop(explainer.stop())));
        return tags;
    }

    private Entry word(GlossaryWord word) {
        return new Entry(Kind.WORD, word.id(), library.language(), word.word(), namesOf(word), List.of(),
                List.of(Passage.of(word.means())), word.topic().map(this::about).orElse(Set.of()),
                Optional.empty(), WORD);
    }

    private Entry job(Job job) {
        String key = "job." + job.id();
        return new Entry(Kind.JOB, job.id().value(), library.language(), texts.get(key + ".name"),
                List.of(texts.get(key + ".want")), List.of(), List.of(),
                Set.of(Tag.job(job.id()), Tag.work(job.group())), Optional.empty(), JOB);
    }

    private Entry attachment(Attachment attachment) {
        String key = "attachment." + attachment.id();
        Set<Tag> tags = new HashSet<>();
        attachment.classes().forEach(each -> tags.add(Tag.machineClass(each)));
        List<String> related = new ArrayList<>();
        for (Job job : jobs) {
            if (attachment.does().contains(job.id())) {
                tags.add(Tag.job(job.id()));
                tags.add(Tag.work(job.group()));
                related.add(texts.get("job." + job.id() + ".name"));
            }
        }
        List<Passage> passages = Stream.of(".short", ".trade-off")
                .flatMap(each -> texts.find(key + each).stream())
                .map(Passage::of)
                .toList();
        return new Entry(Kind.ATTACHMENT, attachment.id().value(), library.language(), texts.get(key + ".name"),
                List.of(), related, passages, tags, Optional.empty(), ATTACHMENT);
    }

    private Entry unit(Unit unit) {
        Set<Tag> tags = new HashSet<>();
        tags.add(Tag.machineClass(unit.model().machineClass()));
        List<String> fitted = new ArrayList<>();
        var labels = new Labels(texts);
        for (Feature feature : catalogue.features()) {
            Fact fact = unit.fact(feature.id());
            if (fact instanceof Fact.Fitted) {
                tags.add(Tag.fitted(feature.id()));
                fitted.add(labels.feature(feature.id()));
            } else if (fact instanceof Fact.Unverified) {
                tags.add(Tag.unverified(feature.id()));
            }
        }
        unit.bundled().stream().sorted().forEach(item -> fitted.add(labels.item(item)));
        List<String> names = new ArrayList<>(List.of(
                unit.model().title(), texts.get("class." + unit.model().machineClass().id())));
        unit.model().findFigure(Figure.ENGINE_POWER).ifPresent(power -> names.add(
                String.format(Locale.ROOT, "%.0f hp tractor", power.si() / WATTS_A_HORSEPOWER)));
        return new Entry(Kind.UNIT, unit.id().value(), library.language(), labels.unit(unit), names, List.of(),
                List.of(Passage.of(String.join(", ", fitted))), tags, Optional.of(unit.price().asking()), UNIT);
    }

    private Entry question(QuizQuestion question) {
        String key = "quiz." + question.id();
        return new Entry(Kind.QUIZ, question.id().value(), library.language(), texts.get(key + ".ask"),
                List.of(), List.of(), List.of(Passage.of(texts.get(key + ".right"))), about(question.topic()),
                Optional.empty(), QUIZ);
    }

    private Entry calculation(Worksheet sheet) {
        String key = "work.calculation." + sheet.id();
        Set<Tag> tags = sheet.topics().stream().flatMap(topic -> about(topic).stream()).collect(Collectors.toSet());
        return new Entry(Kind.CALCULATION, sheet.id(), library.language(), texts.get(key + ".ask"), List.of(),
                List.of(), List.of(Passage.of(texts.get(key + ".how"))), tags, Optional.empty(), CALCULATION);
    }
}

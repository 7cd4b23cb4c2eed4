package fencerow.content;

import fencerow.checklist.LineTemplate;
import fencerow.needs.Job;
import fencerow.needs.Question;
import fencerow.quiz.QuizQuestion;
import fencerow.stock.Item;
import fencerow.stock.Model;
import fencerow.stock.PriceBook;
import fencerow.stock.Unit;
import fencerow.terms.Capability;
import fencerow.terms.Feature;
import fencerow.terms.PriceRange;
import fencerow.visit.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Reads everything but words and settings: first all ids, then the records, so that any can name any other. */
final class TradeReader {
    private final Sources sources;
    private final Ids ids;
    private final Problems problems;
    private final Map<Kind, List<YamlNode>> tops = new LinkedHashMap<>();
    private final IdLists lists;
    private final EffectReader effects;
    private List<Capability> capabilities = List.of();

    TradeReader(Sources sources, Ids ids, Problems problems) {
        this.sources = sources;
        this.ids = ids;
        this.problems = problems;
        this.lists = new IdLists(ids);
        this.effects = new EffectReader(ids, new Capabilities(ids, problems));
    }

    /** Declares every id. */
    void declare() {
        capabilities = maps(Kind.CAPABILITY, "capabilities.yaml").stream()
                .flatMap(top -> new CapabilityReader(ids, effects.capabilities()).read(top).stream())
                .toList();
        declareList(Kind.STATE, "states.yaml");
        maps(Kind.FEATURE, "features.yaml").forEach(new FeatureReader(ids, effects)::declare);
        declareKeys(Kind.ADD_ON, "add-ons.yaml");
        declareKeys(Kind.ATTACHMENT, "attachments.yaml");
        declareList(Kind.CONDITION, "condition.yaml");
        declareKeys(Kind.JOB, "jobs.yaml");
        declareKeys(Kind.MODEL, "models.yaml");
        lists(Kind.QUESTION, List.of("questions.yaml")).forEach(
                new QuestionReader(ids, lists, new RuleReader(effects))::declare);
        if (ids.isIncomplete(Kind.QUESTION) || ids.isIncomplete(Kind.JOB)) {
            ids.markIncomplete(Kind.OPTION);
        }
        List<String> quizFiles = sources.contentNames("", "quiz", ".yaml");
        lists(Kind.QUIZ, quizFiles.isEmpty() ? List.of("quiz.yaml") : quizFiles).forEach(
                new QuizReader(ids, lists)::declare);
        lists(Kind.LINE, List.of("checklist.yaml"));
        declareKeys(Kind.CALCULATION, "calculations.yaml");
    }

    private void declareKeys(Kind kind, String file) {
        maps(kind, file).forEach(top ->
                top.entries().forEach(entry -> ids.declare(kind, entry.key(), entry.place())));
    }

    private void declareList(Kind kind, String file) {
        lists(kind, List.of(file)).forEach(top ->
                top.list().forEach(node -> ids.declare(kind, node.text(), node.place())));
    }

    private List<YamlNode> maps(Kind kind, String file) {
        return tops(kind, List.of(file), true);
    }

    private List<YamlNode> lists(Kind kind, List<String> files) {
        return tops(kind, files, false);
    }

    private List<YamlNode> tops(Kind kind, List<String> files, boolean asMap) {
        List<YamlNode> found = new ArrayList<>();
        for (String file : files) {
            Optional<YamlNode> top = sources.contentYaml(file);
            if (top.isEmpty()) {
                ids.markIncomplete(kind);
            } else if (asMap ? top.get().isMap() : top.get().isList()) {
                found.add(top.get());
            } else {
                ids.markIncomplete(kind);
                top.get().error("the file is not written as " + (asMap ? "keys with values" : "a list"),
                        asMap ? "write id: {...} for each" : "start each entry with a hyphen");
            }
        }
        tops.put(kind, found);
        return found;
    }

    /** Reads the records. */
    Trade read(UnitReader.Fees fees) {
        List<Feature> features = all(Kind.FEATURE, new FeatureReader(ids, effects)::read);
        Map<String, Feature> byId = new LinkedHashMap<>();
        features.forEach(feature -> byId.put(feature.id().value(), feature));
        Map<String, Item> items = new LinkedHashMap<>();
        all(Kind.ADD_ON, new AddOnReader(effects, lists)::read).forEach(it -> items.put(it.id().value(), it));
        all(Kind.ATTACHMENT, new AttachmentReader(effects, lists)::read).forEach(it -> items.put(it.id().value(), it));
        Map<String, ModelReader.Made> models = new LinkedHashMap<>();
        var modelReader = new ModelReader(ids, byId, new FigureCheck(problems));
        tops.getOrDefault(Kind.MODEL, List.of()).forEach(top -> models.putAll(modelReader.read(top)));

        int before = problems.count();
        Map<String, Map<Job.OtherWay, PriceRange>> yearly =
                table("hire.csv", new HireReader(ids)::read).orElse(Map.of());
        boolean allYearly = sources.hasConfig("hire.csv") && problems.count() == before;
        List<Job> jobs = all(Kind.JOB, new JobReader(lists, yearly, allYearly)::read);
        PriceBook prices =
                table("prices.csv", new PriceReader(ids, items)::read).orElse(new PriceBook(Map.of()));
        List<Question> questions = all(Kind.QUESTION, new QuestionReader(ids, lists, new RuleReader(effects))::read);
        List<QuizQuestion> quiz = all(Kind.QUIZ, new QuizReader(ids, lists)::read);
        List<LineTemplate> lines = all(Kind.LINE, new LineReader(ids, lists, byId)::read);
        Map<String, String> synonyms = sources.configYamlIfThere("columns.yaml")
                .map(top -> new ColumnReader(UnitReader.COLUMNS, byId.keySet()).read(top))
                .orElse(Map.of());
        var unitReader = new UnitReader(ids, byId, models, fees, synonyms);
        List<Worksheet> worksheets =
                all(Kind.CALCULATION, new WorksheetReader(ids, lists, questions)::read);
        List<Unit> units = sources.stock()
                .map(file -> new StockReader(ids, unitReader).read(file, problems))
                .orElse(List.of());
        new FeatureCheck(ids, problems).check(features, items.values(), quiz, lines);
        List<Model> allModels = models.values().stream().map(ModelReader.Made::model).toList();
        return new Trade(capabilities, features, List.copyOf(items.values()), allModels, prices, questions, jobs, quiz,
                lines, units, worksheets, unitReader);
    }

    private <T> List<T> all(Kind kind, Function<YamlNode, List<T>> reader) {
        return tops.getOrDefault(kind, List.of()).stream().flatMap(top -> reader.apply(top).stream()).toList();
    }

    private <T> Optional<T> table(String name, BiFunction<SourceFile, Problems, T> reader) {
        return sources.config(name).map(file -> reader.apply(file, problems));
    }
}

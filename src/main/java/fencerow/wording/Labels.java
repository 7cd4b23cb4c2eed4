package fencerow.wording;

import fencerow.checklist.ChecklistLine;
import fencerow.quiz.QuizQuestion;
import fencerow.stock.Availability;
import fencerow.stock.Condition;
import fencerow.stock.Model;
import fencerow.stock.Unit;
import fencerow.stock.UsualModel;
import fencerow.terms.CapabilityId;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.OptionId;
import fencerow.terms.StateId;
import java.util.Map;
import java.util.Optional;

/**
 * What things are called: features, items, capabilities, units, answers.
 *
 * @param texts the words of the language
 */
public record Labels(Texts texts) {
    private static final String SPANISH = "es";

    /** The feature's name as a label. */
    public String feature(FeatureId feature) {
        return texts.get("feature." + feature + ".name");
    }

    /** The name of an add-on, attachment or condition note. */
    public String item(ItemId item) {
        return texts.find("attachment." + item + ".name")
                .or(() -> texts.find("add-on." + item + ".name"))
                .orElseGet(() -> texts.get("condition." + item + ".name"));
    }

    /**
     * A label as it stands inside a sentence: in Spanish without its capital, unless the word is written in capitals.
     * What somebody said is quoted and keeps it.
     */
    public String inSentence(String label) {
        boolean lower = texts.locale().getLanguage().equals(SPANISH)
                && label.length() > 1
                && !Character.isUpperCase(label.charAt(1));
        return lower ? label.substring(0, 1).toLowerCase(texts.locale()) + label.substring(1) : label;
    }

    /** What is mounted in a working state, to follow what is done in it. */
    String state(StateId state) {
        return texts.get("state." + state + ".name");
    }

    /** What the shopper wants when they ask for the job, to follow "You want to". */
    public String want(JobId job) {
        return texts.get("job." + job + ".want");
    }

    /** The name of whatever the capability stands for. */
    public String capability(CapabilityId capability) {
        String value = capability.value();
        if (value.startsWith("does:")) {
            return texts.get("job." + value.substring(5) + ".name");
        }
        if (value.startsWith("has:")) {
            return item(new ItemId(value.substring(4)));
        }
        return texts.find("capability." + value + ".name").orElseGet(() -> ofFeature(capability));
    }

    /** What is asked for by who asks for the capability, or for the lack of it; empty where its name says it. */
    Optional<String> demand(CapabilityId capability) {
        return texts.find("capability." + capability + ".demand");
    }

    private String ofFeature(CapabilityId capability) {
        String value = capability.value();
        int dot = value.indexOf('.');
        if (dot < 0) {
            return texts.get("feature." + value + ".name");
        }
        String feature = value.substring(0, dot);
        return texts.find("feature." + feature + ".kind." + value.substring(dot + 1))
                .orElseGet(() -> texts.get("feature." + feature + ".name"));
    }

    /** Maker and name of a model; for a stand-in what it stands for. */
    public String model(Model model) {
        return UsualModel.is(model) ? texts.get("usual-model") : model.title();
    }

    /** Maker, model, year, condition and hours of a unit. */
    public String unit(Unit unit) {
        boolean driven = unit.condition() != Condition.NEW && unit.hours().isPresent();
        return texts.get(driven ? "unit.used" : "unit.new", Map.of(
                "title", model(unit.model()),
                "year", unit.year().isPresent() ? Integer.toString(unit.year().getAsInt()) : "",
                "condition", texts.get("condition-of-sale." + unit.condition().id()),
                "hours", unit.hours().orElse(0)));
    }

    /** Where a unit is, and in how many days it can be here. */
    public String availability(Unit unit) {
        return unit.availability() == Availability.IN_STOCK
                ? texts.get("availability.in-stock")
                : texts.get("availability." + unit.availability().id(), Map.of("days", unit.leadDays()));
    }

    /** An answer of a quiz question as the shopper read it. */
    public String quizOption(QuizQuestion question, OptionId option) {
        return question.kind() == QuizQuestion.Kind.BELIEF
                ? texts.get("belief." + option)
                : texts.get("quiz." + question.id() + ".option." + option + ".label");
    }

    /** What the line says to check. */
    public String lineWhat(ChecklistLine line) {
        return lineWords(line, "what", "name");
    }

    /** How to check it in seconds. */
    public String lineHow(ChecklistLine line) {
        return lineWords(line, "how", "check");
    }

    /** What good looks like. */
    public String lineGood(ChecklistLine line) {
        return lineWords(line, "good", "good");
    }

    /** What bad looks like, or when to walk away. */
    public String lineBad(ChecklistLine line) {
        return lineWords(line, "bad", "bad");
    }

    /** A line's own words, else its feature's. */
    private String lineWords(ChecklistLine line, String own, String ofFeature) {
        String key = "line." + line.id() + "." + own;
        Optional<String> fromFeature = line.template()
                .feature()
                .flatMap(feature -> texts.find("feature." + feature + "." + ofFeature));
        return texts.find(key).or(() -> fromFeature).orElseGet(() -> texts.get(key));
    }
}

package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.checklist.LineTemplate;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Job;
import fencerow.needs.Needs;
import fencerow.needs.Question;
import fencerow.needs.Rule;
import fencerow.stock.AddOn;
import fencerow.stock.Attachment;
import fencerow.stock.Catalogue;
import fencerow.stock.PriceBook.ItemPrice;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Fact;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.Offering;
import fencerow.terms.OptionId;
import fencerow.terms.PriceRange;
import fencerow.terms.QuestionId;
import fencerow.terms.StateId;
import fencerow.terms.Stop;
import fencerow.terms.Threshold;
import fencerow.terms.TopicId;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written in the tiny showroom's files, found again in the records. */
class TinyContentTest {
    /** The pound: NIST Handbook 44, appendix C. */
    private static final double KG_PER_LB = 0.45359237;

    @TempDir
    private Path folder;

    private TinyContent tiny = new TinyContent(Path.of(""));

    @BeforeEach
    void copy() {
        tiny = TinyContent.copyTo(folder);
    }

    private Catalogue catalogue() {
        return tiny.readGood().showroom().catalogue();
    }

    private Unit unit(String id) {
        return tiny.readGood().showroom().units().stream()
                .filter(unit -> unit.id().value().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static FeatureId feature(String id) {
        return new FeatureId(id);
    }

    @Test
    void itIsGoodWithoutWarnings() {
        Reading<Content> reading = tiny.read();
        assertEquals(List.of(), TinyContent.problems(reading));
        assertEquals(List.of(), reading.warnings());
    }

    @Test
    void featuresKeepOrderOfferingKindsAndEffects() {
        var features = catalogue().features();
        assertEquals(List.of("loader", "quick-attach", "roll-bar", "rear-remotes"),
                features.stream().map(each -> each.id().value()).toList());
        var quickAttach = catalogue().getFeature(feature("quick-attach"));
        assertEquals(Offering.COMMON, quickAttach.offeringOn(MachineClass.MID));
        assertEquals(Stop.LOADER, quickAttach.stop());
        assertTrue(quickAttach.core() && quickAttach.hurts());
        assertEquals(
                Set.of("quick-attach", "quick-attach.plate", "quick-coupler", "loader-lift"),
                Set.copyOf(quickAttach.effects(Optional.of("plate")).stream().map(e -> e.of().value()).toList()));
        assertEquals(3, catalogue().getFeature(feature("rear-remotes")).most());
    }

    @Test
    void amountsBecomeSiAndDemandsTakeTheAttachmentsState() {
        var forks = (Attachment) catalogue().findItem(new ItemId("pallet-forks")).orElseThrow();
        assertEquals(320 * KG_PER_LB, forks.mass().si(), 1e-9);
        assertEquals(42 * 0.0254, forks.width().si(), 1e-12);
        Demand weight = forks.needs().get(2);
        assertEquals(new StateId("loader-work"), weight.in());
        assertEquals(300 * KG_PER_LB, ((Threshold.Fixed) weight.threshold()).amount().si(), 1e-9);
        var kit = (AddOn) catalogue().findItem(new ItemId("remote-kit")).orElseThrow();
        assertEquals(Demand.ANY_STATE, kit.needs().get(0).in());
        assertEquals(2, kit.max());
        assertFalse(kit.classes().contains(MachineClass.UTILITY));
        assertEquals(OptionalInt.of(20), catalogue().findItem(new ItemId("hose-kit")).orElseThrow().stopgapHours());
    }

    @Test
    void aBlankClassPricesAllClassesThatTheItemIsMadeFor() {
        var prices = catalogue().prices();
        assertEquals(
                Optional.of(new ItemPrice(
                        Optional.of(PriceRange.ofDollars(300, 700)), Optional.of(PriceRange.ofDollars(500, 1100)))),
                prices.findPrice(new ItemId("coupler-kit"), MachineClass.UTILITY));
        assertEquals(Optional.empty(), prices.findPrice(new ItemId("remote-kit"), MachineClass.MID));
        assertEquals(Optional.of(PriceRange.ofDollars(300, 800)),
                prices.findLater(new ItemId("worn-tires"), MachineClass.LARGE));
    }

    @Test
    void aNewUnitComesAsTheModelDoesWhereNothingIsWritten() {
        Unit unit = unit("n-2");
        assertEquals(new Fact.Absent(), unit.fact(feature("quick-attach")));
        assertEquals(Fact.fitted(), unit.fact(feature("loader")));
        assertEquals(new Fact.Absent(), unit.fact(feature("rear-remotes")));
        assertEquals(60, unit.leadDays());
        assertEquals(Money.ofDollars(17500 + 600 + 350 + 195), unit.price().outTheDoor());
    }

    @Test
    void cellsSayKindsCountsAndWhatNobodyChecked() {
        assertEquals(new Fact.Fitted(1, Optional.of("plate")), unit("n-1").fact(feature("quick-attach")));
        assertEquals(new Fact.Fitted(1, Optional.empty()), unit("n-1").fact(feature("rear-remotes")));
        assertEquals(new Fact.Unverified(List.of(new Fact.Absent(), new Fact.Fitted(1, Optional.of("plate")),
                new Fact.Fitted(1, Optional.of("hook")))), unit("u-1").fact(feature("quick-attach")));
        tiny.replace("kiosk-config/stock.csv", "worn-tires,?,", "worn-tires,yes,no");
        assertEquals(new Fact.Unverified(
                        List.of(new Fact.Fitted(1, Optional.of("plate")), new Fact.Fitted(1, Optional.of("hook")))),
                unit("u-1").fact(feature("quick-attach")), "fitted, kind not known");
        assertEquals(new Fact.Absent(), unit("u-1").fact(feature("rear-remotes")));
    }

    @Test
    void aUsedUnitNobodyLookedAtHasWhatIsIncludedLacksWhatCannotBeAndMayHaveTheRest() {
        Unit unit = unit("u-1");
        assertEquals(Fact.fitted(), unit.fact(feature("roll-bar")), "included on the class");
        assertEquals(new Fact.Unverified(List.of(new Fact.Absent(), Fact.fitted())), unit.fact(feature("rear-remotes")),
                "extra on the model, at most one");
        tiny.replace("content/models.yaml", "offering: {rear-remotes: extra}", "offering: {rear-remotes: never}");
        assertEquals(new Fact.Absent(), unit("u-1").fact(feature("rear-remotes")));
        assertEquals(Set.of(new ItemId("pallet-forks")), unit.bundled());
        assertEquals(List.of(new ItemId("worn-tires")), unit.catchUp());
    }

    @Test
    void questionsKeepTheirRules() {
        var questionnaire = tiny.readGood().showroom().questionnaire();
        Question lift = questionnaire.find(new QuestionId("heaviest-lift")).orElseThrow();
        assertEquals(Map.of(new QuestionId("jobs"), List.of(new OptionId("move-pallets"))), lift.when());
        assertInstanceOf(Rule.Level.Answered.class, lift.rules().get(0).level());
        assertInstanceOf(Rule.Level.Counterweight.class, lift.rules().get(1).level());
        Question door = questionnaire.find(new QuestionId("door-height")).orElseThrow();
        assertEquals(-2 * 0.0254, ((Rule.Level.Answered) door.rules().get(0).level()).plus().si(), 1e-12);
        Question area = questionnaire.find(new QuestionId("mown-area")).orElseThrow();
        assertInstanceOf(Rule.Level.MowingWidth.class, area.rules().get(0).level());
        Question jobs = questionnaire.find(new QuestionId("jobs")).orElseThrow();
        assertEquals(List.of("move-pallets", "mow-lawn"), jobs.options().stream().map(o -> o.id().value()).toList());
        Question tools = questionnaire.find(new QuestionId("tools")).orElseThrow();
        assertEquals(List.of(new ItemId("pallet-forks")), tools.options().get(0).owns());
        assertEquals(List.of(new JobId("mow-lawn")), tools.options().get(1).hires());
        assertEquals(3, tools.options().get(2).rules().get(0).weight());
        assertEquals(Map.of(Job.OtherWay.HIRE, PriceRange.ofDollars(250, 700)), questionnaire.jobs().get(0).yearly());
    }

    @Test
    void answersComeToNeedsWithTheAmountGiven() {
        Needs needs = tiny.readGood().showroom().questionnaire().needs(Answers.NONE
                .with(new QuestionId("door-height"), new Answer.Measured(new Amount(Dimension.LENGTH, 2.1336))));
        var demand = needs.musts().get(0).demand();
        assertEquals(new CapabilityId("height"), demand.of());
        assertEquals(2.1336 - 0.0508, ((Threshold.Fixed) demand.threshold()).amount().si(), 1e-12);
    }

    @Test
    void quizFilesAreJoinedAndChecksHaveATopic() {
        var quiz = tiny.readGood().showroom().quiz();
        assertEquals(List.of("check-resale", "loader", "quick-attach", "roll-bar", "rear-remotes"),
                quiz.questions().stream().map(each -> each.id().value()).toList());
        var check = quiz.find(new QuestionId("check-resale")).orElseThrow();
        assertEquals(new TopicId("resale"), check.topic());
        assertEquals(Optional.empty(), check.feature());
    }

    @Test
    void linesTakeStopAndTopicFromTheirFeatureAndSayTheRestThemselves() {
        List<LineTemplate> lines = tiny.readGood().showroom().composer().templates();
        LineTemplate bar = lines.get(2);
        assertEquals(Stop.OPERATOR_STATION, bar.stop());
        assertEquals(Optional.of(new TopicId("roll-bar")), bar.topic());
        assertEquals(LineTemplate.Audience.EVERYONE, bar.audience());
        assertEquals(PriceRange.ofDollars(600, 1800), bar.atStake().money());
        assertTrue(bar.walkAway());
        assertEquals(LineTemplate.Audience.FEATURE, lines.get(0).audience());
        assertEquals(LineTemplate.Audience.FEATURE, lines.get(4).audience(), "for: topic");
        assertTrue(lines.get(5).atStake().job());
    }

    @Test
    void anotherStockListTakesThePlaceOfTheShowroomsOwn() {
        String stock = tiny.text("kiosk-config/stock.csv");
        tiny.write("other.csv", stock.replace("u-1", "u-9")).write("kiosk-config/stock.csv", "spoilt");
        Path other = folder.resolve("other.csv");
        Reading<Content> reading = new ContentReader()
                .read(folder.resolve("content"), folder.resolve("kiosk-config"), Optional.of(other));
        assertEquals(List.of("n-1", "n-2", "u-9"), TinyContent.good(reading).showroom().units().stream()
                .map(unit -> unit.id().value()).toList());
        tiny.write("other.csv", stock.replace("plate,1", "plank,1"));
        assertEquals(new Place(other.toString(), 2), TinyContent.problems(new ContentReader()
                .read(folder.resolve("content"), folder.resolve("kiosk-config"), Optional.of(other))).get(0).place());
    }

    @Test
    void aRowKeepsItsLineAfterACellOfSeveralLines() {
        tiny.replace("kiosk-config/stock.csv", "n-2,wren-24", "\n# a remark, with commas\nn-2,wren-24")
                .replace("kiosk-config/stock.csv", "n-1,wren-24", "n-1,\"wren-24\n\n\"")
                .replace("kiosk-config/stock.csv", "12900", "dear");
        assertEquals(List.of("kiosk-config/stock.csv:8: column [asking]: [dear] is no whole number; "
                        + "write digits only, from 0 to 10000000"),
                TinyContent.problems(tiny.read()).stream().map(Problem::toString).toList());
    }

    @Test
    void spreadsheetsMayWriteAMarkAtTheStartAndReturnsAtLineEnds() {
        tiny.write("kiosk-config/stock.csv", "\uFEFF" + tiny.text("kiosk-config/stock.csv").replace("\n", "\r\n"));
        assertEquals(3, tiny.readGood().showroom().units().size());
    }
}

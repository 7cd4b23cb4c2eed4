package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.FigureEntry;
import fencerow.backoffice.document.InsteadEntry;
import fencerow.backoffice.document.MatchDocument;
import fencerow.backoffice.document.NeedEntry;
import fencerow.backoffice.document.PlanLine;
import fencerow.backoffice.document.SimulationDocument;
import fencerow.backoffice.document.UnitEntry;
import fencerow.content.Content;
import fencerow.match.Verdict;
import fencerow.stock.Catalogue;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class MatchCommandTest {
    static final List<String> SHOPPERS = Run.SHOPPER_NAMES;

    private static final List<String> VERDICTS = Stream.of(Verdict.values()).map(Verdict::id).toList();
    private static final Map<String, Run> RUNS = new HashMap<>();
    private static Content content;

    @BeforeAll
    static void readAndRun() {
        content = Run.shipped();
        SHOPPERS.forEach(shopper -> RUNS.put(shopper, all(shopper)));
    }

    private static Run all(String shopper) {
        return Run.of("match", "--answers", Run.answers(shopper), "--json", "--top", "1000");
    }

    private static MatchDocument document(String shopper) {
        return RUNS.get(shopper).fine().document(MatchDocument.class);
    }

    private static boolean hasPlan(UnitEntry unit) {
        return unit.price().readyMid().isPresent();
    }

    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void everyIdIsOneOfTheContent(String shopper) {
        MatchDocument document = document(shopper);
        Catalogue catalogue = content.showroom().catalogue();
        Set<String> needs = new HashSet<>(document.needs().stream().map(NeedEntry::id).toList());
        Set<String> units = new HashSet<>(
                content.showroom().units().stream().map(unit -> unit.id().value()).toList());

        assertEquals(document.needs().size(), needs.size(), "need ids are unique");
        assertEquals(units, new HashSet<>(document.units().stream().map(UnitEntry::id).toList()));
        for (UnitEntry unit : document.units()) {
            unit.plan().forEach(line -> assertItem(catalogue, line.item()));
            unit.blocked().forEach(blocked -> blocked.item().ifPresent(item -> assertItem(catalogue, item)));
            unit.verify().forEach(verify ->
                    assertTrue(catalogue.findFeature(new FeatureId(verify.feature())).isPresent(), verify.feature()));
            assertTrue(needs.containsAll(unit.irreducible()), unit.id());
            assertTrue(needs.containsAll(unit.wishesMet()) && needs.containsAll(unit.wishesUnmet()), unit.id());
        }
        document.changes().forEach(change -> assertTrue(needs.contains(change.dropped()), change.dropped()));
        document.changes().forEach(change -> assertTrue(units.containsAll(change.gained()), change.dropped()));
        Set<JobId> jobs = new HashSet<>(content.showroom().questionnaire().jobs().stream().map(j -> j.id()).toList());
        document.otherWays().forEach(way -> assertTrue(jobs.contains(new JobId(way.job())), way.job()));
    }

    private static void assertItem(Catalogue catalogue, String item) {
        assertTrue(catalogue.findItem(new ItemId(item)).isPresent(), item);
    }

    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void unitsComeInTheOrderOfTheDesign(String shopper) {
        List<UnitEntry> units = document(shopper).units();
        Comparator<UnitEntry> order = Comparator
                .<UnitEntry>comparingInt(unit -> VERDICTS.indexOf(unit.verdict()))
                .thenComparing(unit -> unit.price().overBudget().isPresent())
                .thenComparing(UnitEntry::mustsMet, Comparator.reverseOrder())
                .thenComparing(UnitEntry::score, Comparator.reverseOrder())
                .thenComparing(MatchCommandTest::rankedPrice)
                .thenComparing(UnitEntry::id);

        assertEquals(
                units.stream().sorted(order).map(UnitEntry::id).toList(),
                units.stream().map(UnitEntry::id).toList());
    }

    private static BigDecimal rankedPrice(UnitEntry unit) {
        UnitEntry.Price price = unit.price();
        return price.readyMid().orElseGet(() -> price.outTheDoor()
                .add(price.catchUpLow().add(price.catchUpHigh()).divide(BigDecimal.valueOf(2))));
    }

    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void pricesAddUp(String shopper) {
        for (UnitEntry unit : document(shopper).units()) {
            UnitEntry.Price price = unit.price();
            assertEquals(
                    price.asking().add(price.freight()).add(price.setup()).add(price.fees()), price.outTheDoor());
            if (hasPlan(unit)) {
                BigDecimal planLow = sum(unit, PlanLine::low);
                BigDecimal planHigh = sum(unit, PlanLine::high);
                assertEquals(Optional.of(planLow), price.planLow(), unit.id());
                assertEquals(Optional.of(planHigh), price.planHigh(), unit.id());
                assertEquals(Optional.of(price.outTheDoor().add(price.catchUpLow()).add(planLow)), price.readyLow());
                assertEquals(Optional.of(price.outTheDoor().add(price.catchUpHigh()).add(planHigh)), price.readyHigh());
            }
        }
    }

    private static BigDecimal sum(
            UnitEntry unit, Function<PlanLine, BigDecimal> dollars) {
        return unit.plan().stream().map(dollars).reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add);
    }

    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void everyVerdictSaysWhy(String shopper) {
        for (UnitEntry unit : document(shopper).units()) {
            boolean ready = Set.of("ready", "ready-once-equipped", "to-order").contains(unit.verdict());
            assertEquals(ready, hasPlan(unit), unit.id());
            assertEquals(ready, unit.mustsMet() == unit.mustsAll(), unit.id());
            assertEquals(ready, unit.irreducible().isEmpty(), unit.id());
            assertEquals(ready, unit.blocked().isEmpty(), unit.id());
            assertEquals(
                    unit.verdict().equals("look-closer"),
                    unit.verify().stream().anyMatch(UnitEntry.Unchecked::flips),
                    unit.id());
            assertTrue(unit.score() >= 0 && unit.score() <= 100, unit.id());
            assertFalse(unit.reasons().isEmpty(), unit.id());
        }
    }

    /** Every reason, part and price that the document promises is there for some unit of the demo. */
    @Test
    void nothingThatDecidesIsLeftOutOfTheDocument() {
        List<UnitEntry> all = SHOPPERS.stream().flatMap(shopper -> document(shopper).units().stream()).toList();
        UnitEntry equipped = any(all, unit -> unit.verdict().equals("ready-once-equipped"));
        assertFalse(equipped.plan().isEmpty());
        assertTrue(all.stream().filter(MatchCommandTest::hasPlan).allMatch(MatchCommandTest::saysWhichToolDoesAJob));
        assertFalse(equipped.instead().isEmpty());
        any(all, unit -> !unit.wishesMet().isEmpty() && !unit.wishesUnmet().isEmpty());
        any(all, unit -> !unit.wishesPlanned().isEmpty());
        any(all, unit -> unit.beatenBy().isPresent() && hasPlan(unit));
        any(all, unit -> unit.concession().isPresent());
        any(all, unit -> unit.blocked().stream().anyMatch(blocked -> blocked.state().isPresent()));
        any(all, unit -> unit.irreducible().size() > 1);
        any(all, unit -> unit.price().promo().isPresent());
        UnitEntry look = any(all, unit -> unit.verdict().equals("look-closer"));
        assertFalse(look.blocked().isEmpty());
        assertFalse(look.irreducible().isEmpty());
        assertEquals(Optional.empty(), look.price().readyMid());
        String feature = look.verify().stream().filter(UnitEntry.Unchecked::flips).findFirst().orElseThrow().feature();
        String name = content.getTexts("en").get("feature." + feature + ".name");
        assertTrue(look.reasons().stream().anyMatch(reason -> reason.contains(name)), look.reasons().toString());
        assertFalse(document(SHOPPERS.get(0)).changes().isEmpty());
        assertFalse(document(SHOPPERS.get(0)).otherWays().isEmpty());
    }

    private static boolean saysWhichToolDoesAJob(UnitEntry unit) {
        return unit.plan().stream().anyMatch(line -> !line.does().isEmpty());
    }

    private static UnitEntry any(List<UnitEntry> units, Predicate<UnitEntry> which) {
        return units.stream().filter(which).findFirst().orElseThrow();
    }

    /** Whoever is ready and beaten, is so by one that scores no less for no more; whoever is not, by none. */
    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void theParetoFlagIsOnExactlyThoseThatAreBeaten(String shopper) {
        List<UnitEntry> ready = document(shopper).units().stream().filter(MatchCommandTest::hasPlan).toList();
        for (UnitEntry unit : ready) {
            boolean beaten = ready.stream().anyMatch(other -> {
                int price = rankedPrice(other).compareTo(rankedPrice(unit));
                int score = Integer.compare(other.score(), unit.score());
                return price <= 0 && score >= 0 && (price < 0 || score > 0);
            });
            assertEquals(beaten, unit.beatenBy().isPresent(), unit.id());
        }
    }

    @Test
    void anOfferForATradeInIsALineOfThePriceAndMovesNoUnit() {
        String shopper = SHOPPERS.get(0);
        Run run = Run.of("match", "--answers", Run.answers(shopper), "--trade-in", "4000", "--json", "--top", "1000");
        List<UnitEntry> plain = document(shopper).units().stream().filter(MatchCommandTest::hasPlan).toList();
        List<UnitEntry> traded = run.fine().document(MatchDocument.class).units();
        for (UnitEntry unit : plain) {
            UnitEntry less = any(traded, other -> other.id().equals(unit.id()));
            assertEquals(0, less.price().trade().compareTo(BigDecimal.valueOf(4000)), unit.id());
            assertEquals(
                    rankedPrice(unit).subtract(BigDecimal.valueOf(4000)), rankedPrice(less), unit.id());
            assertEquals(unit.price().outTheDoor(), less.price().outTheDoor(), unit.id());
        }
        Run.of("match", "--answers", Run.answers(shopper), "--trade-in", "-1").failed(FencerowCommand.WRONG_USE);
    }

    /** Simple payback: price over yearly cost (ASTM E1121; from memory), begun years counted. */
    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void otherWaysStandBesideOwningAndInNoSum(String shopper) {
        for (UnitEntry unit : document(shopper).units()) {
            for (InsteadEntry way : unit.instead()) {
                assertEquals(hasPlan(unit), way.owningLow().isPresent(), unit.id());
                way.yearsLow().ifPresent(years -> assertEquals(
                        Math.max(1, Math.ceil(way.owningLow().orElseThrow().doubleValue() / way.high().doubleValue())),
                        (double) years, unit.id() + ": " + way));
                way.yearsHigh().ifPresent(years -> assertEquals(
                        Math.max(1, Math.ceil(way.owningHigh().orElseThrow().doubleValue() / way.low().doubleValue())),
                        (double) years, unit.id() + ": " + way));
                assertTrue(way.reason().startsWith("Or "), way.reason());
            }
        }
    }

    @Test
    void theDemoHasEveryVerdict() {
        Set<String> seen = new TreeSet<>();
        SHOPPERS.forEach(shopper -> document(shopper).units().forEach(unit -> seen.add(unit.verdict())));

        assertEquals(new TreeSet<>(VERDICTS), seen);
    }

    @Test
    void madeUpShoppersAreCountedAndComeOutTheSameForTheSameSeed() {
        Run first = Run.of("match", "--simulate", "1", "--seed", "3", "--json").fine();
        SimulationDocument document = first.document(SimulationDocument.class);

        assertEquals(1, document.shoppers());
        assertTrue(document.askedLeast() > 0 && document.askedLeast() == document.askedMost());
        assertEquals(first.out(), Run.of("match", "--simulate", "1", "--seed", "3", "--json").fine().out());
    }

    @Test
    void answersAndMadeUpShoppersExcludeEachOther() {
        assertEquals(FencerowCommand.WRONG_USE, Run.of("match").code());
        assertEquals(FencerowCommand.WRONG_USE,
                Run.of("match", "--simulate", "1", "--answers", Run.answers("long-drive")).code());
        assertEquals(FencerowCommand.WRONG_USE, Run.of("match", "--simulate", "0").code());
    }

    @Test
    void needsAreOfTheirKinds() {
        Map<String, NeedEntry> needs = new HashMap<>();
        document("small-farm").needs().forEach(need -> needs.put(need.of() + " " + need.states().get(0), need));

        NeedEntry job = needs.get("does:move-pallets any");
        assertEquals("flag", job.kind());
        assertTrue(job.must());
        NeedEntry door = needs.get("height parked");
        assertEquals("at-most", door.kind());
        // 10 ft less 2 in; the foot is 0.3048 m, the inch 0.0254 m (international yard and pound agreement, 1959).
        assertEquals(0, new BigDecimal("2.9972").compareTo(door.amount().orElseThrow()));
        assertEquals("m", door.unit());
        NeedEntry lift = needs.get("loader-lift loader-work");
        assertEquals("at-least", lift.kind());
        assertEquals(Optional.empty(), lift.amount());
        // 900 lb; the pound is 0.45359237 kg (the same agreement), written to nine digits.
        assertEquals(new BigDecimal("408.233133"), lift.from().get(0).amount());
        NeedEntry weight = needs.get("hitch-weight loader-work");
        assertEquals(Optional.empty(), weight.amount());
        assertEquals("load", weight.from().get(0).what());
    }

    @Test
    void theSameComesOutEveryTime() {
        assertEquals(
                RUNS.get("long-drive").out(),
                all("long-drive").out());
    }

    @Test
    void topLimitsTheUnitsAndNotTheirCount() {
        MatchDocument few = Run.of("match", "--json", "--top", "3", "--answers", Run.answers("long-drive"))
                .fine()
                .document(MatchDocument.class);

        assertEquals(document("long-drive").units().subList(0, 3), few.units());
        assertEquals(content.showroom().units().size(), few.unitsAll());
        MatchDocument usual = Run.of("match", "--json", "--answers", Run.answers("long-drive"))
                .fine()
                .document(MatchDocument.class);
        assertEquals(document("long-drive").units().subList(0, 20), usual.units());
        assertEquals(content.showroom().units().size(), usual.unitsAll());
    }

    @Test
    void textNamesUnitsVerdictsAndPrices() {
        String text = Run.of("match", "--top", "2", "--answers", Run.answers("long-drive")).fine().out();
        UnitEntry best = document("long-drive").units().get(0);

        assertTrue(text.contains("1. " + best.id() + ": " + best.title()), text);
        assertTrue(text.contains("Ready to work"), text);
        assertTrue(text.contains("Budget: $18,000"), text);
        document("long-drive").cautions().forEach(caution ->
                assertTrue(text.replaceAll("\\s+", " ").contains(caution.text()), caution.id()));
    }

    @Test
    void anotherStockListIsTakenInPlaceOfTheShowrooms(@TempDir Path folder) throws IOException {
        List<String> rows = Files.readAllLines(Path.of("kiosk-config/stock.csv"));
        Path stock = Files.write(folder.resolve("two.csv"), rows.subList(0, 3));

        MatchDocument document = Run.of(
                        "--stock", stock.toString(), "match", "--json", "--answers", Run.answers("long-drive"))
                .fine()
                .document(MatchDocument.class);

        assertEquals(2, document.units().size());
    }

    @Test
    void brokenAnswersAreAllNamedWithFileAndLine(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("shopper.yaml"), "answers:\n  jobs: [mow-lawns]\n  dor-height: 7 ft\n");

        Run run = Run.of("match", "--json", "--answers", file.toString()).failed(FencerowCommand.NOT_FINE);

        assertTrue(run.err().contains(file + ":2: "), run.err());
        assertTrue(run.err().contains("did you mean [mow-lawn]?"), run.err());
        assertTrue(run.err().contains(file + ":3: "), run.err());
        assertEquals(2, run.err().lines().count(), run.err());
    }

    @Test
    void missingAnswersFileIsNamed() {
        Run run = Run.of("match", "--answers", "nowhere.yaml").failed(FencerowCommand.NOT_FINE);

        assertTrue(run.err().startsWith("nowhere.yaml:1: "), run.err());
    }

    @Test
    void wrongUseIsToldApart() {
        Run noAnswers = Run.of("match").failed(FencerowCommand.WRONG_USE);
        assertTrue(noAnswers.err().contains("--answers"), noAnswers.err());
        Run none = Run.of("match", "--answers", Run.answers("long-drive"), "--top", "0");
        assertTrue(none.failed(FencerowCommand.WRONG_USE).err().contains("--top 0"), none.err());
    }

    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void everyUnitCarriesItsFiguresOrSaysWhatTheyLack(String shopper) {
        for (UnitEntry unit : document(shopper).units()) {
            assertEquals(
                    List.of("lifts", "mows", "ballast", "hauls"),
                    unit.figures().stream().map(FigureEntry::what).toList(),
                    unit.id());
            for (FigureEntry figure : unit.figures()) {
                assertTrue(figure.low().isPresent() != figure.missing().isPresent(), unit.id() + " " + figure);
                assertEquals(figure.low().isPresent(), figure.high().isPresent(), unit.id() + " " + figure);
            }
        }
    }

    /** The loader's share of the work is met by the same calculation that the figure comes from. */
    @Test
    void unitThatCanBeMadeReadyLiftsTheHeaviestLoadAtItsCenter() {
        BigDecimal load = document("small-farm").needs().stream()
                .flatMap(need -> need.from().stream())
                .filter(from -> from.what().equals("load"))
                .map(NeedEntry.Source::amount)
                .findFirst()
                .orElseThrow();
        List<UnitEntry> ready = document("small-farm").units().stream().filter(MatchCommandTest::hasPlan).toList();
        assertFalse(ready.isEmpty());
        for (UnitEntry unit : ready) {
            FigureEntry lifts = unit.figures().get(0);
            assertTrue(lifts.high().orElseThrow().compareTo(load) >= 0, unit.id() + " lifts " + lifts);
        }
    }
}

package fencerow.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Job;
import fencerow.needs.Needs;
import fencerow.needs.Questionnaire;
import fencerow.needs.Requirement;
import fencerow.terms.JobId;
import fencerow.terms.OptionId;
import fencerow.terms.PriceRange;
import fencerow.terms.QuestionId;
import fencerow.wording.InsteadWords;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Hire and contract stand beside owning and never in it. */
class InsteadTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();
    private static final JobId SNOW = new JobId("clear-snow");
    private static final String SNOW_MUST = "jobs/clear-snow";
    private static final Visit VISIT = Visit.NEW
            .answered(new QuestionId("jobs"), new Answer.Chosen(
                    List.of(new OptionId("clear-snow"), new OptionId("keep-drive"))))
            .answered(new QuestionId("snow-tool"), Answer.Chosen.of("front-blower"))
            .answered(new QuestionId("drive-length"), Answer.Chosen.of("long"));

    private static List<Instead> instead(Visit visit, Ranking ranking, Match match, JobId job) {
        return SHOWROOM.instead(visit, ranking, match).stream()
                .filter(each -> each.job().id().equals(job))
                .toList();
    }

    /**
     * Simple payback is the first cost over the yearly saving, whole years begun: ASTM E1121, Standard Practice for
     * Measuring Payback for Investments in Buildings and Building Systems; from memory.
     */
    @Test
    void owningPaysAfterPriceOverYearlyCost() {
        assertEquals(Optional.of(new Instead.Years(4, 19)),
                Instead.Years.of(PriceRange.ofDollars(4700, 7250), PriceRange.ofDollars(400, 1500)));
        assertEquals(Optional.of(new Instead.Years(3, 3)),
                Instead.Years.of(PriceRange.ofDollars(900, 900), PriceRange.ofDollars(300, 300)));
        assertEquals(Optional.of(new Instead.Years(1, 1)),
                Instead.Years.of(PriceRange.ofDollars(50, 80), PriceRange.ofDollars(200, 400)));
        assertEquals(Optional.empty(), Instead.Years.of(PriceRange.ZERO, PriceRange.ofDollars(200, 400)));
        assertEquals(Optional.empty(), Instead.Years.of(PriceRange.ofDollars(50, 80), PriceRange.ofDollars(0, 400)));
    }

    /** What the plan costs more for the job's sake is what it costs less when the job is done another way. */
    @Test
    void owningIsWhatThePlanCostsLessWithoutTheJob() {
        Ranking ranking = SHOWROOM.ranking(VISIT);
        Ranking without = SHOWROOM.ranking(VISIT.toggleAside(SNOW_MUST));
        int dear = 0;
        for (Match match : ranking.ready()) {
            PriceRange owning = instead(VISIT, ranking, match, SNOW).get(0).owning().orElseThrow().price();
            PriceRange left = without.matches().stream()
                    .filter(other -> other.unit().equals(match.unit()))
                    .findFirst()
                    .orElseThrow()
                    .price()
                    .plan();
            long less = match.price().plan().middle().minus(left.middle()).cents();
            assertTrue(Math.abs(less - owning.middle().cents()) <= 1, match.unit().id().value());
            dear += owning.low().toDollars() > 3000 ? 1 : 0;
        }
        assertTrue(dear > 0, "no unit needs a blower");
    }

    @Test
    void whatOtherWaysCostMovesNoUnit() {
        Questionnaire all = SHOWROOM.questionnaire();
        List<Job> free = all.jobs().stream()
                .map(job -> new Job(job.id(), job.group(), job.cautions(),
                        Map.of(Job.OtherWay.HIRE, PriceRange.ofDollars(1, 2))))
                .toList();
        var cheapHire = new Showroom(SHOWROOM.catalogue(), new Questionnaire(all.questions(), free), SHOWROOM.quiz(),
                SHOWROOM.composer(), SHOWROOM.weights(), SHOWROOM.lot(), SHOWROOM.workbook());
        List<Match> before = SHOWROOM.ranking(VISIT).matches();
        List<Match> after = cheapHire.ranking(VISIT).matches();
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i).unit().id(), after.get(i).unit().id());
            assertEquals(before.get(i).price(), after.get(i).price());
        }
    }

    @Test
    void aJobSetAsideIsHiredAndNothingIsAskedForItsSake() {
        Needs needs = SHOWROOM.needs(VISIT);
        assertTrue(needs.musts().stream().anyMatch(must -> must.id().startsWith("snow-tool")), needs.toString());
        Needs hired = SHOWROOM.needs(VISIT.toggleAside(SNOW_MUST));
        assertEquals(Set.of(SNOW), hired.hired());
        assertFalse(hired.requirements().stream().map(Requirement::id).anyMatch(InsteadTest::isAboutSnow));
        assertEquals(needs, SHOWROOM.needs(VISIT.toggleAside(SNOW_MUST).toggleAside(SNOW_MUST)));
    }

    @Test
    void questionsAboutAJobSetAsideAreIdleAndNoOthers() {
        assertEquals(Set.of(), SHOWROOM.idleQuestions(VISIT));

        Set<QuestionId> idle = SHOWROOM.idleQuestions(VISIT.toggleAside(SNOW_MUST));

        assertTrue(idle.contains(new QuestionId("snow-tool")), idle.toString());
        Answers others = VISIT.answers().with(new QuestionId("jobs"), new Answer.Chosen(VISIT.answers()
                .chosen(new QuestionId("jobs")).stream()
                .filter(job -> !job.value().equals(SNOW.value()))
                .toList()));
        SHOWROOM.questionnaire().applying(others).forEach(question -> assertFalse(idle.contains(question.id())));
    }

    private static boolean isAboutSnow(String id) {
        return id.equals(SNOW_MUST) || id.startsWith("snow-tool") || id.startsWith("drive-length");
    }

    @Test
    void paidWaysComeBeforeAnotherMachineAndTheCheaperFirst() {
        List<Instead> ways = SHOWROOM.elsewhere(Set.of(SNOW, new JobId("split-wood")));
        assertEquals(List.of(
                        Job.OtherWay.CONTRACT, Job.OtherWay.OTHER_MACHINE,
                        Job.OtherWay.HIRE, Job.OtherWay.CONTRACT, Job.OtherWay.OTHER_MACHINE),
                ways.stream().map(Instead::way).toList());
        assertEquals(2, Instead.first(ways).size());
    }

    @Test
    void aSentenceSaysWhatOwningTakesAndWhenItPays() {
        Job job = SHOWROOM.questionnaire().jobs().stream().filter(each -> each.id().equals(SNOW)).findFirst()
                .orElseThrow();
        var hire = new Instead(job, Job.OtherWay.CONTRACT, PriceRange.ofDollars(400, 1500), Optional.of(
                new Instead.Owning(PriceRange.ofDollars(4700, 7250), Optional.of(new Instead.Years(4, 19)))));
        assertEquals("Or pay someone: $400 to $1,500 a year. Owning what this tractor needs for it costs $4,700 to"
                + " $7,250 and pays after 4 to 19 years.", words("en").whole(hire));
        assertEquals("O pague a alguien: $400 a $1,500 al a\u00f1o. Comprar lo que le falta a este tractor para eso"
                + " cuesta $4,700 a $7,250 y conviene despu\u00e9s de 4 a 19 a\u00f1os.", words("es").whole(hire));
        var one = new Instead(job, Job.OtherWay.CONTRACT, PriceRange.ofDollars(400, 400), Optional.of(
                new Instead.Owning(PriceRange.ofDollars(400, 400), Optional.of(new Instead.Years(1, 1)))));
        assertTrue(words("en").whole(one).endsWith("costs $400 and pays after 1 year."), words("en").whole(one));
    }

    private static InsteadWords words(String language) {
        Texts texts = Rooms.premises().texts(language);
        return new InsteadWords(new Phrases(texts, Object::toString));
    }
}

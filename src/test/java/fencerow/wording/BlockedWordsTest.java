package fencerow.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.match.Blocked;
import fencerow.match.Match;
import fencerow.match.Matcher;
import fencerow.needs.Because;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import fencerow.terms.Threshold;
import fencerow.terms.UnitOfMeasure;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A chain of reasons is read as a sentence: what it is for, and with what mounted. */
class BlockedWordsTest {
    private static final Content CONTENT = ((Reading.Good<Content>) new ContentReader()
            .read(Path.of("content"), Path.of("kiosk-config"), Optional.empty())).content();
    private static final StateId FRONT_TOOL_ON = new StateId("front-tool-on");
    private static final Match ANY = new Matcher(CONTENT.showroom().catalogue()).match(
            CONTENT.showroom().units().get(0), Needs.NONE);

    private static Phrases in(String language) {
        Texts texts = CONTENT.getTexts(language);
        return new Phrases(texts, new Quantities(texts.locale(), false)::show);
    }

    private static String plain(String shown) {
        return shown.replace('\u00a0', ' ');
    }

    private static Blocked tooLittlePower(Optional<StateId> in) {
        return new Blocked(Optional.of(new ItemId("front-blower-54")), new CapabilityId("pto-power"),
                Blocked.Rule.TOO_LITTLE, Optional.of(horsepower(20)), Optional.of(horsepower(19.3)), in);
    }

    private static Amount horsepower(double value) {
        return UnitOfMeasure.HORSEPOWER.of(value);
    }

    @Test
    void aCauseSaysWithWhatMounted() {
        assertEquals("PTO power: this one gives 19.3 hp; your work needs 20 hp. Needed for: Front snow blower, 54 in,"
                        + " with a front tool on and the loader off",
                plain(in("en").blocked(tooLittlePower(Optional.of(FRONT_TOOL_ON)), ANY)));
        assertEquals("PTO power: this one gives 19.3 hp; your work needs 20 hp. Needed for: Front snow blower, 54 in",
                plain(in("en").blocked(tooLittlePower(Optional.empty()), ANY)));
    }

    @Test
    void inSpanishToo() {
        String said = plain(in("es").blocked(tooLittlePower(Optional.of(FRONT_TOOL_ON)), ANY));
        assertEquals(", con implemento delantero y sin cargador", said.substring(said.lastIndexOf(',')), said);
        assertEquals("Hace falta para: s", said.substring(said.indexOf("Hace falta"), said.indexOf("Hace falta") + 18));
    }

    /** Small after a colon and in a list: Ortograf\u00eda de la lengua espa\u00f1ola, RAE, 2010; from memory. */
    @Test
    void labelsLoseTheirCapitalInsideASpanishSentence() {
        Labels spanish = in("es").labels();
        assertEquals("luces de trabajo", spanish.inSentence("Luces de trabajo"));
        assertEquals("PTO que gira libre", spanish.inSentence("PTO que gira libre"));
        assertEquals("\u00e1rbol", spanish.inSentence("\u00c1rbol"));
        assertEquals("2 x cajas", spanish.inSentence("2 x cajas"));
        assertEquals("Work lights", in("en").labels().inSentence("Work lights"));
    }

    @Test
    void aMustHaveOfItsOwnSaysItOnceAtTheEnd() {
        var blocked = new Blocked(Optional.empty(), new CapabilityId("height"), Blocked.Rule.TOO_MUCH,
                Optional.of(new Amount(Dimension.LENGTH, 82 * 0.0254)),
                Optional.of(new Amount(Dimension.LENGTH, 89 * 0.0254)), Optional.of(new StateId("parked")));
        assertEquals("Height with the bar up: this one has 89 in; 82 in is the most that fits, parked in the shed",
                plain(in("en").blocked(blocked, ANY)));
    }

    @Test
    void aNeedSaysInWhichWorkingStates() {
        var lift = new Demand(new CapabilityId("loader-lift"), Relation.AT_LEAST,
                Threshold.of(new Amount(Dimension.MASS, 453.59237)), new StateId("loader-work"));
        var requirement = new Requirement("heaviest-lift/loader-lift", List.of(lift), true, 1,
                new Because(new QuestionId("heaviest-lift"), Optional.empty(), Optional.empty()));
        assertEquals("What is the heaviest thing your loader must lift? That asks for: Loader lift ahead of the pins:"
                + " at least 1,000 lb, with the loader working.", plain(in("en").chain(requirement)));
        var job = new Requirement("jobs/clear-snow", List.of(Demand.flag(CapabilityId.does(new JobId("clear-snow")))),
                true, 1, new Because(new QuestionId("jobs"), Optional.of(new OptionId("clear-snow")),
                        Optional.of(new JobId("clear-snow"))));
        assertEquals("You want to clear snow. That asks for: clear snow.", in("en").chain(job));
    }
}

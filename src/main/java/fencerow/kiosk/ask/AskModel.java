package fencerow.kiosk.ask;

import fencerow.kiosk.kit.Sketch;
import fencerow.needs.Question;
import fencerow.terms.Amount;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** One question as it is shown. What the shopper changes while it is shown is observable. */
final class AskModel {
    private final Card card;
    private final ObjectProperty<Given> given = new SimpleObjectProperty<>(Given.NOTHING);
    private final ObjectProperty<Optional<Fits>> fits = new SimpleObjectProperty<>(Optional.empty());
    private final BooleanProperty settled = new SimpleBooleanProperty();

    AskModel(Card card) {
        this.card = card;
    }

    /**
     * What does not change.
     *
     * @param ask      the question
     * @param why      why it is asked
     * @param choose   what kind of answer it takes
     * @param tiles    what can be picked: options, or common amounts
     * @param steps    by how much an amount can be changed at a touch; empty for other questions
     * @param done     questions answered
     * @param left     questions open, this one among them where it is
     * @param progress the same in words
     * @param alone    whether only this answer is being changed
     */
    record Card(
            String ask,
            String why,
            Question.Choose choose,
            List<Tile> tiles,
            List<Step> steps,
            int done,
            int left,
            String progress,
            boolean alone) {
        Card {
            tiles = List.copyOf(tiles);
            steps = List.copyOf(steps);
        }
    }

    /** One thing to pick; {@code key} tells it from the others. Where a drawing says more than words, it has one. */
    record Tile(String key, String words, Optional<String> hint, Optional<Sketch> sketch) {}

    /** A change of the amount by so many of the question's steps; negative for less. */
    record Step(int steps, String words) {}

    /**
     * What the shopper has answered to this question.
     *
     * @param keys     of the tiles that are chosen
     * @param amount   in words, where one was set
     * @param notSure  whether they said so
     * @param answered whether there is any answer at all
     */
    record Given(Set<String> keys, Optional<String> amount, boolean notSure, boolean answered) {
        static final Given NOTHING = new Given(Set.of(), Optional.empty(), false, false);

        Given {
            keys = Set.copyOf(keys);
        }
    }

    /** How many tractors can do everything so far, of how many. */
    record Fits(int count, String words) {}

    /** What the shopper touched. */
    interface Touches {
        void pick(String key);

        void change(int steps);

        void next();

        void notSure();

        void skip();

        void takeBack();

        void results();

        void overview();
    }

    Card card() {
        return card;
    }

    ObjectProperty<Given> given() {
        return given;
    }

    ObjectProperty<Optional<Fits>> fits() {
        return fits;
    }

    /** Whether more answers would hardly change which tractors come first. */
    BooleanProperty settled() {
        return settled;
    }

    /** Amounts are told apart to the smallest difference that counts. */
    static String key(Amount amount) {
        return Long.toString(amount.steps());
    }
}

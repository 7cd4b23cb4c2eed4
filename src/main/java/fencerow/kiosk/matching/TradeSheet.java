package fencerow.kiosk.matching;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keypad;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.terms.Money;
import java.util.Map;
import java.util.function.UnaryOperator;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/**
 * Asks, laid over a screen, what is offered here for the shopper's own tractor. Only the amount is asked; it is part of
 * the visit and forgotten with it.
 */
final class TradeSheet {
    private static final double WORDS_EMS = 18;
    private static final double KEYPAD_EMS = 18;

    private final Frame frame;
    private final Label amount = Words.of(Styles.NUMBER, "");

    private TradeSheet(Frame frame) {
        this.frame = frame;
    }

    /** A button that lays it; the offer stands on it where there is one. */
    static Touch button(Frame frame) {
        Money offer = frame.visit().get().tradeOffer();
        String words = offer.cents() == 0
                ? frame.say("trade.open")
                : frame.say("trade.change", Map.of("amount", frame.phrases().money(offer)));
        return Buttons.secondary(Icon.MONEY, words, () -> new TradeSheet(frame).lay());
    }

    private void lay() {
        show();
        var keypad = new Keypad(frame.scale(), frame.say("quote.take-away"),
                digits -> change(now -> Dollars.typed(now, digits)), () -> change(Dollars::takenAway));
        Touch done = Buttons.primary(Icon.CHECK, frame.say("trade.done"), frame::lift);
        done.setMaxWidth(VBox.USE_PREF_SIZE);
        VBox words = Boxes.loose(Words.body(frame.say("trade.ask")), amount, Words.small(frame.say("trade.why")), done);
        frame.lay(frame.say("trade.title"),
                new Split(frame.scale(), words, WORDS_EMS, keypad, KEYPAD_EMS));
    }

    private void change(UnaryOperator<Money> next) {
        frame.change(visit -> visit.offered(next.apply(visit.tradeOffer())));
        show();
    }

    private void show() {
        amount.setText(frame.phrases().money(frame.visit().get().tradeOffer()));
    }
}

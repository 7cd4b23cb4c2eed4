package fencerow.kiosk.matching;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Ends;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.PriceBar;
import fencerow.kiosk.kit.Remark;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.VerdictBadge;
import fencerow.kiosk.kit.VerdictSign;
import fencerow.kiosk.kit.Words;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Draws units and what was asked for. */
public final class MatchParts {
    private static final double REASON_EMS = 20;
    private static final double BUTTONS_EMS = 19;
    /** The least width of the screen to have buttons beside the reasons, and room for a photograph below them. */
    private static final double SIDE_EMS = 43;
    /** The least width of the screen to have a photograph beside the reasons. */
    private static final double PHOTOGRAPH_EMS = 24;

    private final Frame frame;
    private final Scale scale;

    /** In the frame's language and size. */
    public MatchParts(Frame frame) {
        this.frame = frame;
        this.scale = frame.scale();
    }

    /** How many units do everything: a number, and the sentence that follows it. */
    public static Node count(int count, String summary) {
        Label number = Words.of("count-figure", Integer.toString(count));
        number.setMinWidth(Region.USE_PREF_SIZE);
        HBox row = Boxes.row(number, Boxes.growing(Words.lead(summary)));
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }

    /** A unit with its price and reasons, and a photograph beside these; {@code open} and {@code pin} get touches. */
    public Node card(UnitCard card, Optional<Node> photograph, Consumer<UnitId> open, Consumer<UnitId> pin) {
        HBox buttons = Boxes.row(
                Buttons.secondary(Icon.FORWARD, frame.say("results.open"), () -> open.accept(card.unit())),
                Buttons.secondary(Icon.PIN, frame.say(card.pinned() ? "results.pinned" : "results.pin"),
                                () -> pin.accept(card.unit()))
                        .select(card.pinned()));
        buttons.setAlignment(Pos.BOTTOM_RIGHT);
        VBox lines = Boxes.stack(scored(card));
        HBox reasons = Boxes.row(Boxes.growing(lines));
        reasons.setAlignment(Pos.TOP_LEFT);
        VBox side = Boxes.stack(buttons);
        side.setAlignment(Pos.TOP_RIGHT);
        double width = frame.widthInEms();
        Pane room = width >= SIDE_EMS ? side : width >= PHOTOGRAPH_EMS ? reasons : lines;
        photograph.ifPresent(room.getChildren()::add);
        VBox box = Boxes.card(head(card), bar(card), new Split(scale, reasons, REASON_EMS, side, BUTTONS_EMS));
        box.getStyleClass().add("unit-card");
        return box;
    }

    /** Name and price of a unit. */
    public Node head(UnitCard card) {
        HBox state = Boxes.row(
                new VerdictBadge(card.verdict(), card.verdictName()), Boxes.growing(Words.small(card.where())));
        VBox price = new VBox(Words.of(Styles.NUMBER, card.price()));
        price.setAlignment(Pos.TOP_RIGHT);
        return new Ends(scale, Boxes.stack(Words.subheading(card.title()), state), price);
    }

    /** The price drawn to scale, and what it is made of. */
    public Node bar(UnitCard card) {
        UnitCard.Bar bar = card.bar();
        return Boxes.tight(
                new PriceBar(scale, bar.asked(), bar.further(), bar.longest(), card.price()),
                Words.small(card.priceParts()));
    }

    /** The score, and the reasons. */
    public static List<Node> scored(UnitCard card) {
        List<Node> all = new ArrayList<>();
        all.add(Words.of("score", card.score()));
        all.addAll(reasons(card));
        return all;
    }

    private static List<Node> reasons(UnitCard card) {
        List<Node> all = new ArrayList<>();
        card.speaksFor().forEach(each -> all.add(new Remark(Sign.Kind.YES, each)));
        card.speaksAgainst().forEach(each -> all.add(new Remark(Sign.Kind.NO, each)));
        card.toCheck().forEach(each -> all.add(new Remark(Sign.Kind.UNKNOWN, each)));
        return all;
    }

    /** A unit on a line. */
    public Touch line(UnitLine line, Consumer<UnitId> open) {
        VBox name = Boxes.tight(Words.of("line-title", line.title()), Words.small(line.remark()));
        HBox first = Boxes.row(new VerdictSign(line.verdict()), Boxes.growing(name));
        Ends row = new Ends(scale, first, Words.of("line-price", line.price()));
        return new Touch(line.title() + ". " + line.verdictName() + ". " + line.price() + ". " + line.remark(), row,
                () -> open.accept(line.unit())).styled("unit-line");
    }

    /** Every must-have, to be set aside or asked for again by a touch. */
    public Node musts(Asked asked, Consumer<String> toggle) {
        VBox box = Boxes.stack();
        for (Asked.Must must : asked.musts()) {
            ChoiceTile tile = ChoiceTile.several(must.words(), must.instead(), must.counts(),
                    () -> toggle.accept(must.id()));
            tile.getStyleClass().add("must");
            box.getChildren().add(tile);
        }
        return box;
    }

    /** Asks what is offered here for the shopper's own tractor; shows it where it was told. */
    public Touch tradeIn() {
        return TradeSheet.button(frame);
    }

    /** The wishes, each on a line. */
    public Node wishes(Asked asked) {
        VBox box = Boxes.tight();
        asked.wishes().forEach(wish -> box.getChildren().add(Words.body(wish)));
        return box;
    }

    /** What doing without one must-have would bring; a touch tries it. */
    public Node changes(List<Asked.Change> changes, Consumer<String> toggle) {
        VBox box = Boxes.stack();
        for (Asked.Change change : changes) {
            HBox row = Boxes.row(Boxes.growing(Words.body(change.words())), Icon.FORWARD.node());
            row.setAlignment(Pos.CENTER_LEFT);
            box.getChildren().add(new Touch(change.words(), row, () -> toggle.accept(change.must()))
                    .styled("change"));
        }
        return box;
    }
}

package fencerow.kiosk.find;

import fencerow.kiosk.find.FindModel.Card;
import fencerow.kiosk.find.FindModel.Found;
import fencerow.kiosk.find.FindModel.Target;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keyboard;
import fencerow.kiosk.kit.Paragraph;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.search.Kind;
import fencerow.search.Marked;
import fencerow.search.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Draws the field, what is found, what the words may become, and the keyboard. */
final class FindView {
    private static final double CARD_EMS = 15;
    private static final double NAME_EMS = 12;
    private static final int MOST_COLUMNS = 3;
    /** From this width, in ems, there is room for the list beside the keys. */
    private static final double ROOM_FOR_BOTH = 60;
    /** On a screen wider than high and narrower than this, in ems, the list needs the room of the completions. */
    private static final double ROOM_FOR_COMPLETIONS = 40;
    /** From this width, in ems, the button beside the field says in words what it does. */
    private static final double ROOM_FOR_WORDS = 36;

    private final FindModel model;
    private final Frame frame;
    private final Touches touches;
    private final StackPane list = new StackPane();
    private final StackPane completions = new StackPane();
    private final Node node;
    private Column column;
    private double nextPosition;
    /** Whether parts and sizes to choose from are shown. */
    private boolean choosing;

    /** What can be touched. */
    interface Touches {
        void card(Target target);

        void kind(Optional<Kind> kind);

        void tag(Tag.Of of, Optional<Tag> tag);

        void words(String words);

        void typed(String letter);

        void backspace();

        void close();

        void tractor();
    }

    FindView(FindModel model, Frame frame, double position, Touches touches) {
        this.model = model;
        this.frame = frame;
        this.touches = touches;
        this.nextPosition = position;
        this.column = column(Boxes.stack());
        this.node = page();
        // So that a plugged-in keyboard types here at once.
        node.sceneProperty().subscribe(scene -> {
            if (scene != null) {
                node.requestFocus();
            }
        });
        frame.follow(model.found(), this::show);
    }

    Node node() {
        return node;
    }

    Touches touches() {
        return touches;
    }

    double position() {
        return column.position();
    }

    private Column column(Node content) {
        return new Column(frame.scale(), content, nextPosition, frame.say("column.up"), frame.say("column.down"));
    }

    private Node page() {
        Label typed = Words.of("field-words", "");
        typed.textProperty().bind(model.query());
        StackPane caret = new StackPane();
        caret.getStyleClass().add("caret");
        HBox line = new HBox(Icon.SEARCH.node(), typed, caret);
        line.getStyleClass().add("field-row");
        StackPane field = new StackPane(line);
        field.getStyleClass().addAll(Styles.FIELD, "typing");
        HBox top = Boxes.row(Boxes.growing(field), frame.widthInEms() < ROOM_FOR_WORDS
                ? Buttons.icon(Icon.CLOSE, frame.say("find.close"), touches::close)
                : Buttons.secondary(Icon.CLOSE, frame.say("find.close"), touches::close));
        Keyboard keyboard = new Keyboard(frame.scale(),
                new Keyboard.Names(frame.say("keyboard.letters"), frame.say("keyboard.further"),
                        frame.say("keyboard.space"), frame.say("keyboard.backspace")),
                touches::typed, touches::backspace);
        return isWide()
                ? beside(top, keyboard)
                : Boxes.stack(top, Boxes.growing(list), completions, keyboard);
    }

    private boolean isWide() {
        return frame.isLandscape() && frame.widthInEms() >= ROOM_FOR_BOTH;
    }

    /** Where the screen is wide, the keys stand beside the list, so that both have room. */
    private Node beside(Node top, Keyboard keyboard) {
        VBox right = Boxes.stack(Boxes.filler(), completions, keyboard);
        right.setMinWidth(keyboard.prefWidth(-1));
        right.setMaxWidth(keyboard.prefWidth(-1));
        HBox below = new HBox(Boxes.growing(list), right);
        below.getStyleClass().add("list-and-keys");
        return Boxes.stack(top, Boxes.growing(below));
    }

    private void show(Found found) {
        VBox page = Boxes.stack();
        found.note().ifPresent(note -> page.getChildren().add(Words.lead(note)));
        found.didYouMean().ifPresent(right -> page.getChildren().add(left(Buttons.secondary(Icon.SEARCH,
                frame.say("find.did-you-mean", Map.of("words", right)), () -> touches.words(right)))));
        found.understood().ifPresent(what -> page.getChildren().add(Words.body(what)));
        addNarrowing(page, found);
        if (found.deadEnd()) {
            page.getChildren().add(left(
                    Buttons.secondary(Icon.HOME, frame.say("find.tractor"), touches::tractor)));
        }
        boolean names = found.cards().stream().allMatch(card -> card.text().words().isEmpty());
        page.getChildren().add(new Columns(frame.scale(), names ? NAME_EMS : CARD_EMS, MOST_COLUMNS,
                found.cards().stream().map(this::card).toList()));
        column = column(page);
        nextPosition = 0;
        list.getChildren().setAll(column);
        Wrap words = new Wrap(frame.scale(), found.completions().stream().map(this::completion).toList());
        completions.getChildren().clear();
        if (!frame.isLandscape() || frame.widthInEms() >= ROOM_FOR_COMPLETIONS) {
            completions.getChildren().add(isWide() ? words : words.oneRow());
        }
    }

    /** Kinds are always in view; of parts and sizes what is chosen, and all of them while one chooses. */
    private void addNarrowing(VBox page, Found found) {
        List<Node> chips = new ArrayList<>();
        found.kinds().forEach(kind -> chips.add(chip(kind)));
        for (FindModel.Filter filter : found.filters()) {
            filter.chips().stream()
                    .filter(FindModel.TagChip::isNarrowing)
                    .forEach(chip -> chips.add(drop(filter, chip)));
        }
        if (!found.filters().isEmpty()) {
            chips.add(chip(frame.say("find.narrow"), choosing, () -> choose(!choosing)));
        }
        if (!chips.isEmpty()) {
            page.getChildren().add(new Wrap(frame.scale(), chips));
        }
        if (choosing) {
            found.filters().forEach(filter -> page.getChildren().add(Boxes.tight(
                    Words.of(Styles.STRONG, filter.words()),
                    new Wrap(frame.scale(), filter.chips().stream().map(chip -> choice(filter, chip)).toList()))));
        }
    }

    private void choose(boolean now) {
        choosing = now;
        show(model.found().get());
    }

    /** The choices close behind one, or they would hide what it leaves. */
    private Touch choice(FindModel.Filter filter, FindModel.TagChip chip) {
        return chip(chip.words(), chip.chosen(), () -> {
            choose(false);
            touches.tag(filter.of(), chip.tag());
        });
    }

    private Touch drop(FindModel.Filter filter, FindModel.TagChip chip) {
        HBox words = Boxes.row(Words.of("button-words", chip.words()), Icon.CLOSE.node());
        Touch touch = new Touch(chip.words(), words, () -> touches.tag(filter.of(), Optional.empty()))
                .styled("chip", "kind-chip");
        touch.select(true);
        return touch;
    }

    private static HBox left(Node part) {
        return Boxes.row(part);
    }

    private Touch chip(FindModel.KindChip chip) {
        return chip(chip.words(), chip.chosen(), () -> touches.kind(chip.kind()));
    }

    private static Touch chip(String words, boolean chosen, Runnable action) {
        Touch touch = new Touch(words, Words.of("button-words", words), action).styled("chip", "kind-chip");
        touch.select(chosen);
        return touch;
    }

    private Touch completion(String words) {
        return new Touch(words, Words.of("button-words", words), () -> touches.words(words)).styled("chip");
    }

    private Touch card(Card card) {
        if (card.text().words().isEmpty()) {
            HBox name = Boxes.row(Boxes.growing(Words.of("line-title", card.title().words())));
            return new Touch(card.title().words(), name, () -> touches.card(card.target())).styled("unit-line");
        }
        VBox words = Boxes.tight(
                Words.of("card-kind", card.kind()),
                marked(card.title(), Styles.SUBHEADING),
                marked(card.text(), Styles.SMALL));
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(card.title().words() + ". " + card.text().words(), words, () -> touches.card(card.target()))
                .styled(Styles.CARD, "topic");
    }

    private Paragraph marked(Marked marked, String style) {
        Paragraph paragraph = new Paragraph(frame.scale(), style);
        int at = 0;
        for (Marked.Span span : marked.spans()) {
            if (span.from() > at) {
                paragraph.add(marked.words().substring(at, span.from()), "plain");
            }
            paragraph.add(marked.words().substring(span.from(), span.to()), "looked-for");
            at = span.to();
        }
        if (at < marked.words().length()) {
            paragraph.add(marked.words().substring(at), "plain");
        }
        return paragraph;
    }
}

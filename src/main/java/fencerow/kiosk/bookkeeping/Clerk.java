package fencerow.kiosk.bookkeeping;

import fencerow.desk.Edit;
import fencerow.desk.Sale;
import fencerow.desk.StockChange;
import fencerow.desk.StockChange.Answer;
import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Ledger;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * Writes changes of one unit into the stock book, one after the other, and says on the screen whatever keeps one from
 * being kept. Nothing that was typed is lost when somebody else was quicker. Confined to the screen's thread.
 */
public final class Clerk {
    private static final String DESK = "stock-change";

    private final Frame frame;
    private final StockDesk desk;
    private final CellWords words;
    private final Told told;
    private final Deque<Wish> wishes = new ArrayDeque<>();
    private StockEntry entry;
    private boolean busy;

    /** Who is told how changes went. */
    public interface Told {
        /** The unit as it stands now, by this change or by somebody else's. */
        void now(StockEntry now);

        /** Nothing was kept, because of what stands in these columns now. */
        void wrong(Map<String, String> cells, Set<String> columns);
    }

    private record Wish(Map<String, String> cells, Optional<Sale> sale) {}

    /** For a unit as it stands. */
    public Clerk(Frame frame, StockDesk desk, CellWords words, StockEntry entry, Told told) {
        this.frame = frame;
        this.desk = desk;
        this.words = words;
        this.entry = entry;
        this.told = told;
    }

    /** The unit as it stands. */
    public StockEntry entry() {
        return entry;
    }

    /** Writes cells anew; a blank text empties one. */
    public void write(Map<String, String> cells) {
        wish(new Wish(Map.copyOf(cells), Optional.empty()));
    }

    /** Says whether the unit can be bought. */
    public void sell(Sale sale) {
        wish(new Wish(Map.of(), Optional.of(sale)));
    }

    private void wish(Wish wish) {
        wishes.add(wish);
        next();
    }

    private void next() {
        if (busy || wishes.isEmpty()) {
            return;
        }
        busy = true;
        Wish wish = wishes.remove();
        StockEntry from = entry;
        frame.backRoom().work(DESK, () -> answer(wish, from), answer -> {
            busy = false;
            tell(wish, answer);
            next();
        }, frame::failed);
    }

    private Answer answer(Wish wish, StockEntry from) {
        return wish.sale().isPresent()
                ? new Answer.Done(desk.book().edit(Edit.sale(from, wish.sale().get())))
                : StockChange.write(desk, from, wish.cells());
    }

    private void tell(Wish wish, Answer answer) {
        if (answer instanceof Answer.Wrong wrong) {
            told.wrong(wish.cells(), wrong.columns());
            return;
        }
        Edit.Outcome outcome = ((Answer.Done) answer).outcome();
        if (outcome instanceof Edit.Outcome.Kept kept) {
            stands(kept.now());
        } else if (outcome instanceof Edit.Outcome.Overtaken overtaken) {
            stands(overtaken.now());
            layOvertaken(wish);
        } else {
            layNotKept(frame, outcome);
        }
    }

    private void stands(StockEntry now) {
        entry = now;
        told.now(now);
    }

    private void layOvertaken(Wish wish) {
        Ledger now = new Ledger(frame.scale());
        wish.cells().forEach((column, text) -> words.findColumn(column).ifPresent(each -> {
            now.line(frame.say("book.stands", Map.of("field", words.column(column))), words.value(each, entry.row()));
            now.line(frame.say("book.wanted", Map.of("field", words.column(column))), words.value(each, text));
        }));
        wish.sale().ifPresent(sale -> {
            String field = frame.say("book.column.sale");
            now.line(frame.say("book.stands", Map.of("field", field)), words.sale(entry.sale()));
            now.line(frame.say("book.wanted", Map.of("field", field)), words.sale(sale));
        });
        Node ways = new Wrap(frame.scale(), List.of(
                Buttons.primary(Icon.CHECK, frame.say("book.write-mine"), () -> {
                    frame.lift();
                    wish(wish);
                }),
                Buttons.secondary(Icon.UNDO, frame.say("book.leave-it"), frame::lift)));
        frame.lay(frame.say("book.overtaken"),
                Boxes.loose(Words.body(frame.say("book.overtaken-why")), now, ways));
    }

    /** Says why a change was not kept. */
    public static void layNotKept(Frame frame, Edit.Outcome outcome) {
        String why = outcome instanceof Edit.Outcome.NotKept not ? not.why().id() : "refused";
        VBox words = Boxes.stack(Words.body(frame.say("book.why-not." + why)), Words.body(frame.say("book.unchanged")));
        frame.lay(frame.say("book.not-kept"), words);
    }
}

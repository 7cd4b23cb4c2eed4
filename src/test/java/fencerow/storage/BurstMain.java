package fencerow.storage;

import fencerow.desk.Edit;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Changes a stock book until it is killed: edits of single units and intakes of many, each said on standard output once
 * it was answered as kept. Takes the data folder, a seed and the number to start from.
 */
public final class BurstMain {
    static final int UNITS = 20;
    static final int IMPORTED = 300;

    private BurstMain() {}

    /** Runs until it is killed. */
    public static void main(String[] arguments) throws UnusableStoreException, IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Random random = new Random(Long.parseLong(arguments[1]));
        int number = Integer.parseInt(arguments[2]);
        try (Store store = Store.open(Path.of(arguments[0]), Clock.system(ZoneOffset.UTC))) {
            StockBook book = store.stock();
            for (int i = 0; i < UNITS; i++) {
                book.add(StockRow.of(new UnitId("edit-" + i), Map.of("asking", "0")));
            }
            out.println("open");
            // At most this many, so that a burst nobody kills comes to an end all the same.
            for (int step = 0; step < 100_000; step++) {
                number++;
                if (random.nextInt(10) == 0) {
                    String said = Integer.toString(number);
                    boolean kept = book.take(false, intake -> {
                        for (int i = 0; i < IMPORTED; i++) {
                            intake.put(StockRow.of(new UnitId("take-" + i), Map.of("asking", said)), Set.of("asking"));
                        }
                        return true;
                    }).kept();
                    if (kept) {
                        out.println("take " + number);
                    }
                } else {
                    int unit = random.nextInt(UNITS);
                    Optional<StockEntry> entry = book.find(new UnitId("edit-" + unit));
                    Edit.Outcome outcome = book.edit(
                            Edit.cell(entry.orElseThrow(), "asking", Integer.toString(number)));
                    if (outcome instanceof Edit.Outcome.Kept) {
                        out.println("edit " + unit + " " + number);
                    }
                }
            }
        }
    }
}

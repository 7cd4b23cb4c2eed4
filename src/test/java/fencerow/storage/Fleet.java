package fencerow.storage;

import fencerow.desk.Counter;
import fencerow.desk.Edit;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.desk.Tally;
import fencerow.terms.UnitId;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;

/**
 * Simulated kiosks on one server on loopback: each reads, edits and counts visits at random moments, in the same seeded
 * way each time; in the middle the server is killed and started again. Each kept edit adds one to a unit's asking
 * price, so that in the end every price must be the number of edits of that unit that were answered as kept.
 *
 * @param kept       edits answered as kept
 * @param overtaken  edits answered as overtaken, and made again
 * @param refused    edits refused while the server was away
 * @param unsure     edits whose answer the kill cut off: each may be there or not
 * @param editMillis how long kept and overtaken edits took
 * @param readMillis how long reading all units took while the server was there
 * @param seenMillis from an edit to another kiosk's knowing of it
 * @param wrong      what was lost, counted twice or never caught up; empty if all is well
 */
record Fleet(int kept, int overtaken, int refused, int unsure, List<Double> editMillis, List<Double> readMillis,
        List<Double> seenMillis, List<String> wrong) {
    private static final int UNITS = 200;
    private static final int CELLS = 30;
    private static final int VISITS_A_COUNT = 3;

    /** Prints the figures. Arguments: kiosks (8), seconds (60), seed (1). */
    public static void main(String[] arguments) throws Exception {
        int kiosks = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 8;
        int seconds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 60;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        Path folder = Files.createTempDirectory("fleet");
        Fleet fleet = run(folder, kiosks, Duration.ofSeconds(seconds), seed, true);
        System.out.printf(Locale.ROOT, "%d kiosks, %d s, seed %d, %d units: %d edits kept, %d overtaken and made again,"
                        + " %d refused while the server was away, %d cut off%n", kiosks, seconds, seed, UNITS,
                fleet.kept(), fleet.overtaken(), fleet.refused(), fleet.unsure());
        print("a staff edit", fleet.editMillis());
        print("all units read", fleet.readMillis());
        print("seen by the others", fleet.seenMillis());
        System.out.println(fleet.wrong().size() + " lost, counted twice or not caught up");
        fleet.wrong().forEach(System.out::println);
    }

    private static void print(String what, List<Double> millis) {
        System.out.printf(Locale.ROOT, "%s: p50 %.1f ms, p99 %.1f ms, max %.1f ms (%d)%n", what, at(millis, 0.5),
                at(millis, 0.99), at(millis, 1), millis.size());
    }

    static double at(List<Double> millis, double share) {
        double[] sorted = millis.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.ceil(share * sorted.length) - 1];
    }

    /** What the kiosks do together. */
    private static final class Tallies {
        final AtomicInteger[] keptByUnit = IntStream.range(0, UNITS)
                .mapToObj(i -> new AtomicInteger()).toArray(AtomicInteger[]::new);
        final AtomicInteger[] unsureByUnit = IntStream.range(0, UNITS)
                .mapToObj(i -> new AtomicInteger()).toArray(AtomicInteger[]::new);
        final AtomicInteger overtaken = new AtomicInteger();
        final AtomicInteger refused = new AtomicInteger();
        final AtomicLong visits = new AtomicLong();
        final AtomicLong newest = new AtomicLong();
        final AtomicLong newestAt = new AtomicLong();
        final Queue<Double> edits = new ConcurrentLinkedQueue<>();
        final Queue<Double> reads = new ConcurrentLinkedQueue<>();
        final Queue<Double> seen = new ConcurrentLinkedQueue<>();
    }

    static Fleet run(Path folder, int kiosks, Duration time, long seed, boolean sync) throws Exception {
        Clock clock = Clock.system(ZoneOffset.UTC);
        var done = new Tallies();
        var open = new AtomicBoolean(true);
        List<String> wrong = new ArrayList<>();
        try (TestServer postgres = TestServer.start(folder.resolve("server"), sync)) {
            Server server = postgres.database();
            Store.migrate(server, Optional.empty());
            List<Store> stores = new ArrayList<>();
            for (int i = 0; i < kiosks; i++) {
                stores.add(Store.open(folder.resolve("kiosk-" + i), Optional.of(server), clock));
            }
            fill(stores.get(0));
            List<Thread> followers = stores.stream()
                    .map(store -> new Thread(() -> follow(store, open, done)))
                    .toList();
            followers.forEach(Thread::start);
            warmUp(stores, done);
            AtomicBoolean busy = new AtomicBoolean(true);
            List<Thread> people = IntStream.range(0, kiosks).mapToObj(i -> new Thread(
                    () -> work(stores.get(i), new Random(seed + i), busy, done, clock))).toList();
            people.forEach(Thread::start);
            TimeUnit.MILLISECONDS.sleep(time.toMillis() / 2);
            postgres.kill();
            TimeUnit.MILLISECONDS.sleep(Math.min(5_000, time.toMillis() / 6));
            postgres.startAgain();
            TimeUnit.MILLISECONDS.sleep(time.toMillis() / 2);
            busy.set(false);
            for (Thread person : people) {
                person.join();
            }
            check(stores, done, clock, wrong);
            open.set(false);
            stores.forEach(Store::close);
            for (Thread follower : followers) {
                follower.join();
            }
        }
        return new Fleet(sum(done.keptByUnit), done.overtaken.get(), done.refused.get(), sum(done.unsureByUnit),
                List.copyOf(done.edits), List.copyOf(done.reads), List.copyOf(done.seen), List.copyOf(wrong));
    }

    private static int sum(AtomicInteger[] all) {
        return Arrays.stream(all).mapToInt(AtomicInteger::get).sum();
    }

    private static UnitId unit(int number) {
        return new UnitId("unit-" + number);
    }

    private static void fill(Store store) {
        store.stock().take(false, intake -> {
            for (int i = 0; i < UNITS; i++) {
                Map<String, String> cells = new TreeMap<>(Map.of("asking", "0"));
                for (int cell = 1; cell < CELLS; cell++) {
                    cells.put("feature-" + cell, "yes");
                }
                intake.put(StockRow.of(unit(i), cells), cells.keySet());
            }
            return true;
        });
    }

    /** Kiosks run all day: their first few edits are not measured. */
    private static void warmUp(List<Store> stores, Tallies done) {
        for (int i = 0; i < 200; i++) {
            Store store = stores.get(i % stores.size());
            store.stock().entries();
            edit(store, i % UNITS, done);
        }
        List.of(done.edits, done.seen).forEach(Queue::clear);
    }

    private static void follow(Store store, AtomicBoolean open, Tallies done) {
        long known = 0;
        while (open.get()) {
            store.follow(Duration.ofSeconds(1));
            long newest = done.newest.get();
            long at = done.newestAt.get();
            if (newest > known && open.get() && store.findTrouble().isEmpty() && store.stock().revision() >= newest) {
                known = newest;
                done.seen.add((System.nanoTime() - at) / 1e6);
            }
        }
    }

    /** A person at a kiosk: an edit or another thing about every second, far more than a showroom sees. */
    private static void work(Store store, Random random, AtomicBoolean busy, Tallies done, Clock clock) {
        while (busy.get()) {
            try {
                TimeUnit.MILLISECONDS.sleep(200 + random.nextInt(1_000));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
            int what = random.nextInt(10);
            if (what < 3) {
                long start = System.nanoTime();
                store.stock().entries();
                if (store.findTrouble().isEmpty()) {
                    done.reads.add((System.nanoTime() - start) / 1e6);
                }
            } else if (what < 4) {
                store.journal().add(LocalDate.now(clock),
                        Tally.NONE.plus(Counter.of(Counter.Kind.VISIT, ""), VISITS_A_COUNT));
                done.visits.addAndGet(VISITS_A_COUNT);
            } else {
                // Half of the edits hit the same few units.
                edit(store, random.nextBoolean() ? random.nextInt(4) : random.nextInt(UNITS), done);
            }
        }
    }

    private static void edit(Store store, int number, Tallies done) {
        StockEntry entry = store.stock().find(unit(number)).orElseThrow();
        while (true) {
            boolean wasThere = store.findTrouble().isEmpty();
            int next = Integer.parseInt(entry.row().find("asking").orElseThrow()) + 1;
            long start = System.nanoTime();
            Edit.Outcome outcome = store.stock().edit(Edit.cell(entry, "asking", Integer.toString(next)));
            double millis = (System.nanoTime() - start) / 1e6;
            if (outcome instanceof Edit.Outcome.Overtaken overtaken) {
                done.overtaken.incrementAndGet();
                done.edits.add(millis);
                entry = overtaken.now();
            } else if (outcome instanceof Edit.Outcome.Kept) {
                done.keptByUnit[number].incrementAndGet();
                done.edits.add(millis);
                done.newestAt.set(System.nanoTime());
                done.newest.incrementAndGet();
                return;
            } else {
                (wasThere ? done.unsureByUnit[number] : done.refused).incrementAndGet();
                return;
            }
        }
    }

    private static void check(List<Store> stores, Tallies done, Clock clock, List<String> wrong) throws Exception {
        long deadline = System.nanoTime() + Duration.ofSeconds(30).toNanos();
        LocalDate today = LocalDate.now(clock);
        for (Store store : stores) {
            while (System.nanoTime() < deadline
                    && (!store.notices().isEmpty() || visits(store, today) < done.visits.get())) {
                TimeUnit.MILLISECONDS.sleep(50);
            }
            store.notices().forEach(notice -> wrong.add("still told: " + notice));
        }
        Store store = stores.get(0);
        for (int i = 0; i < UNITS; i++) {
            StockEntry entry = store.stock().find(unit(i)).orElseThrow();
            int asking = Integer.parseInt(entry.row().find("asking").orElseThrow());
            int least = done.keptByUnit[i].get();
            if (asking < least || asking > least + done.unsureByUnit[i].get()) {
                wrong.add("unit " + i + ": " + asking + " after " + least + " kept edits");
            }
        }
        if (visits(store, today) != done.visits.get()) {
            wrong.add(visits(store, today) + " visits of " + done.visits.get());
        }
    }

    private static long visits(Store store, LocalDate today) {
        return store.journal().sum(today.minusDays(1), today.plusDays(1)).count(Counter.Kind.VISIT, "");
    }
}

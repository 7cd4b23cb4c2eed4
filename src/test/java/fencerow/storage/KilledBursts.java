package fencerow.storage;

import fencerow.desk.StockBook;
import fencerow.terms.UnitId;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;

/**
 * Kills a process at random moments of its bursts of changes (SIGKILL, as by a power cut of the program alone) and
 * looks each time whether everything it had answered as kept is there and nothing is there by half.
 *
 * @param bursts       started and killed
 * @param acknowledged changes that had been answered as kept
 * @param intakes      intakes among them, each of {@value BurstMain#IMPORTED} units
 * @param wrong        what was lost or there by half; empty if all is well
 */
record KilledBursts(int bursts, int acknowledged, int intakes, List<String> wrong) {
    private static final int LONGEST_MILLIS = 700;

    /** Prints the figures. Arguments: how many bursts (300), seed (1). */
    public static void main(String[] arguments) throws Exception {
        int bursts = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        Path folder = Files.createTempDirectory("killed-bursts");
        long start = System.nanoTime();
        KilledBursts result = run(folder, bursts, seed);
        System.out.printf(Locale.ROOT, "%d bursts killed, seed %d: %d changes acknowledged, %d intakes of %d units"
                        + " among them; %d lost or by half; %d s%n", result.bursts(), seed, result.acknowledged(),
                result.intakes(), BurstMain.IMPORTED, result.wrong().size(),
                Duration.ofNanos(System.nanoTime() - start).toSeconds());
        result.wrong().forEach(System.out::println);
    }

    static KilledBursts run(Path folder, int bursts, long seed)
            throws IOException, InterruptedException, UnusableStoreException {
        Random random = new Random(seed);
        Map<String, Integer> last = new HashMap<>();
        List<String> wrong = new ArrayList<>();
        int acknowledged = 0;
        int intakes = 0;
        int number = 0;
        for (int burst = 0; burst < bursts; burst++) {
            List<String> said = burst(folder, random.nextLong(), number, random.nextInt(LONGEST_MILLIS));
            for (String line : said) {
                String[] words = line.split(" ", -1);
                number = Math.max(number, Integer.parseInt(words[words.length - 1]));
                last.put(words[0].equals("take") ? "take" : "edit-" + words[1], number);
                intakes += words[0].equals("take") ? 1 : 0;
            }
            acknowledged += said.size();
            // What was under way when it was killed may be there or not; numbers after it are new in any case.
            number += 2;
            look(folder, last, wrong, burst);
        }
        return new KilledBursts(bursts, acknowledged, intakes, wrong);
    }

    /** One process, killed some time after it opened the database; what it had said by then. */
    private static List<String> burst(Path folder, long seed, int number, int millis)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
                        BurstMain.class.getName(), folder.toString(), Long.toString(seed), Integer.toString(number))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> said = new ArrayList<>();
        try (var lines = new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            if (!"open".equals(lines.readLine())) {
                throw new IllegalStateException("the burst did not start; run BurstMain alone to see why");
            }
            process.waitFor(millis, TimeUnit.MILLISECONDS);
            // By its handle: the other way closes the stream before what it had said is read.
            process.toHandle().destroyForcibly();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.matches("(take|edit \\d+) \\d+")) {
                    said.add(line);
                }
            }
        }
        process.waitFor();
        return said;
    }

    private static void look(Path folder, Map<String, Integer> last, List<String> wrong, int burst)
            throws UnusableStoreException {
        try (Store store = Store.open(folder, Clock.system(ZoneOffset.UTC))) {
            store.notices().forEach(notice -> wrong.add("burst " + burst + ": " + notice));
            StockBook book = store.stock();
            for (Map.Entry<String, Integer> kept : last.entrySet()) {
                if (!kept.getKey().equals("take") && asking(book, kept.getKey()) < kept.getValue()) {
                    wrong.add("burst " + burst + ": " + kept.getKey() + " lost " + kept.getValue());
                }
            }
            var imported = new TreeSet<Integer>();
            int count = 0;
            for (var entry : book.entries()) {
                if (entry.row().id().value().startsWith("take-")) {
                    imported.add(Integer.parseInt(entry.row().find("asking").orElse("-1")));
                    count++;
                }
            }
            if (imported.size() > 1 || count != 0 && count != BurstMain.IMPORTED) {
                wrong.add("burst " + burst + ": an intake by half, " + count + " units of " + imported);
            }
            int taken = last.getOrDefault("take", 0);
            if (taken > 0 && (imported.isEmpty() || imported.last() < taken)) {
                wrong.add("burst " + burst + ": the intake " + taken + " is lost, there is " + imported);
            }
        }
    }

    private static int asking(StockBook book, String unit) {
        return book.find(new UnitId(unit))
                .flatMap(entry -> entry.row().find("asking"))
                .map(Integer::parseInt)
                .orElse(-1);
    }
}

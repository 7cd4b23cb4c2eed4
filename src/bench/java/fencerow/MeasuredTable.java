package fencerow;

import fencerow.backoffice.Finders;
import fencerow.backoffice.Folders;
import fencerow.backoffice.PrintShop;
import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.needs.Answer;
import fencerow.needs.Question;
import fencerow.printing.Sheet;
import fencerow.search.Finder;
import fencerow.search.Query;
import fencerow.visit.Visit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * Measures what the kiosk promises and prints it beside its targets. Starts need a display: a real one, Xvfb, or
 * Monocle by {@code -Dglass.platform=Monocle -Dmonocle.platform=Headless}, which are handed on.
 *
 * <p>{@code mvn -Pbench test-compile exec:exec -Dbench.main=fencerow.MeasuredTable}.
 */
public final class MeasuredTable {
    private static final int PAIRS = Integer.getInteger("pairs", 9);
    private static final int TIMES = 200;
    private static final int WARM_UP = 50;
    private static final long SEED = 1;
    private static final List<String> WORDS = List.of("quick attach", "hydraulic plugs", "snow blower under 6000",
            "cab heat", "q", "qu", "pto", "forks for pallets", "can i add a cab", "backhoe");

    private MeasuredTable() {}

    /** A piece of work that is timed; its result is kept from being optimised away. */
    private interface Work {
        Object run(int i);
    }

    /** Measures and prints. */
    public static void main(String[] args) throws IOException, InterruptedException {
        starts();
        Folders folders = Folders.below(Path.of(""));
        row("reading all content", time(20, 5, i -> read(folders))[10], "ms median", "2000");
        Content content = read(folders);
        Finder finder = Finders.of(content);
        row("search, from words to hits", time(TIMES, WARM_UP, i -> finder.find(
                Query.of(WORDS.get(i % WORDS.size()), "en")))[TIMES * 95 / 100], "ms p95", "100");
        Random random = new Random(SEED);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            visits.add(visit(content, random));
        }
        row("ranking the demo's " + content.showroom().units().size() + " units after a touch", time(TIMES, WARM_UP,
                i -> content.showroom().ranking(visits.get(i % TIMES)))[TIMES * 95 / 100], "ms p95", "100");
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
        PrintShop shop = PrintShop.of(content, folders.config(), clock);
        row("list as PDF, warm", time(60, 30, i -> shop.print(visits.get(i), "en", false, shop.format(false),
                List.of(Sheet.LIST, Sheet.COMPARISON)))[30], "ms median", "300");
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        row("memory with content, index and paper", (runtime.totalMemory() - runtime.freeMemory()) / 1e6, "MB", "300");
        child("fencerow.kiosk.KioskBench", List.of("-Xmx1g")).forEach(System.out::println);
        System.out.println("100,000 rows of stock in 512 MiB, target 60 s:");
        child("fencerow.backoffice.StockImportFigures", List.of("-Xmx512m")).stream()
                .filter(line -> line.contains("by the wall"))
                .forEach(System.out::println);
    }

    private static void starts() throws IOException, InterruptedException {
        Path data = Files.createTempDirectory("fencerow-bench");
        double[] bare = new double[PAIRS];
        double[] first = new double[PAIRS];
        double[] all = new double[PAIRS];
        start("prepare", data.toString());
        for (int i = 0; i < PAIRS; i++) {
            bare[i] = start("bare");
            first[i] = start("first", data.toString());
            all[i] = start("all", data.toString());
        }
        Arrays.sort(bare);
        Arrays.sort(first);
        Arrays.sort(all);
        row("start of a bare window", bare[PAIRS / 2], "ms median", "-");
        row("start to the first touchable screen", first[PAIRS / 2], "ms median", "-");
        row("the same as a multiple", first[PAIRS / 2] / bare[PAIRS / 2], "times", "1.6");
        row("start until a touch leads on", all[PAIRS / 2], "ms median", "-");
    }

    private static double start(String... what) throws IOException, InterruptedException {
        return child("fencerow.StartProbe", List.of(), what).stream()
                .filter(line -> line.startsWith("started "))
                .mapToDouble(line -> Double.parseDouble(line.substring(8)))
                .findFirst().orElse(Double.NaN);
    }

    /** What a program prints that runs in a process of its own, on the same kind of display. */
    private static List<String> child(String main, List<String> options, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Dfile.encoding=UTF-8",
                "-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path")));
        for (String handedOn : List.of("glass.platform", "monocle.platform", "headless.geometry", "testfx.robot",
                "testfx.headless", "prism.order")) {
            Optional.ofNullable(System.getProperty(handedOn))
                    .ifPresent(set -> command.add("-D" + handedOn + "=" + set));
        }
        command.addAll(options);
        command.add(main);
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        List<String> printed = new ArrayList<>();
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                printed.add(line);
            }
        }
        process.waitFor();
        return printed;
    }

    private static Content read(Folders folders) {
        Reading<Content> reading = new ContentReader().read(folders.content(), folders.config(), folders.stock());
        return ((Reading.Good<Content>) reading).content();
    }

    private static Visit visit(Content content, Random random) {
        Visit visit = Visit.NEW;
        for (Question question : content.showroom().questionnaire().questions()) {
            if (!question.options().isEmpty()) {
                visit = visit.answered(question.id(), new Answer.Chosen(List.of(
                        question.options().get(random.nextInt(question.options().size())).id())));
            }
        }
        return visit;
    }

    /** Milliseconds of each time, sorted. */
    private static double[] time(int times, int warmUp, Work work) {
        int kept = 0;
        for (int i = 0; i < warmUp; i++) {
            kept += System.identityHashCode(work.run(i));
        }
        double[] milliseconds = new double[times];
        for (int i = 0; i < times; i++) {
            long start = System.nanoTime();
            kept += System.identityHashCode(work.run(i));
            milliseconds[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(milliseconds);
        if (kept == 0) {
            System.out.println();
        }
        return milliseconds;
    }

    private static void row(String what, double measured, String unit, String target) {
        System.out.printf(Locale.ROOT, "%-52s %9.1f %-10s target %s%n", what, measured, unit, target);
    }
}

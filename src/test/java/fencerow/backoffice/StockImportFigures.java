package fencerow.backoffice;

import fencerow.content.ContentReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Prints how long it takes to take in and write out a long stock list, CSV and XLSX. Run it with {@code -Xmx512m} from
 * the project's folder; argument: rows (100000).
 */
public final class StockImportFigures {
    private StockImportFigures() {}

    /** Prints the figures. */
    public static void main(String[] arguments) throws Exception {
        int rows = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
        Path folder = Files.createTempDirectory("stock-figures");
        Path csv = folder.resolve("stock.csv");
        write(csv, rows);
        timed("import CSV", folder.resolve("one"), "stock", "import", csv.toString());
        timed("import CSV again", folder.resolve("one"), "stock", "import", csv.toString());
        timed("export XLSX", folder.resolve("one"), "stock", "export", folder.resolve("stock.xlsx").toString());
        timed("import XLSX", folder.resolve("two"), "stock", "import", folder.resolve("stock.xlsx").toString());
        timed("export CSV", folder.resolve("two"), "stock", "export", folder.resolve("again.csv").toString());
        timed("import that", folder.resolve("one"), "stock", "import", "--dry-run",
                folder.resolve("again.csv").toString());
    }

    private static void write(Path file, int rows) throws Exception {
        Random random = new Random(7);
        List<String> models = List.of("nettle-19", "nettle-24", "peck-22");
        List<String> facts = List.of("", "yes", "no", "unknown");
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file))) {
            out.println("id,model,condition,year,hours,status,lead-days,asking,loader,mid-pto,third-function,"
                    + "front-weights,work-lights,block-heater,grille-guard,sun-canopy,suspension-seat,cruise-control");
            for (int i = 0; i < rows; i++) {
                StringBuilder row = new StringBuilder("u-" + i + "," + models.get(random.nextInt(3)) + ","
                        + (random.nextBoolean() ? "new" : "used") + ",2026," + random.nextInt(900) + ",in-stock,,"
                        + (9_000 + random.nextInt(30_000)));
                for (int f = 0; f < 10; f++) {
                    row.append(',').append(facts.get(random.nextInt(4)));
                }
                out.println(row);
            }
        }
    }

    private static void timed(String what, Path data, String... command) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        long start = System.nanoTime();
        Duration busy = busy();
        var machine = new Machine("Linux", Path.of("/"), Map.of(), data);
        var surroundings = new Surroundings(
                Path.of(""), Clock.system(ZoneOffset.UTC), machine, new ContentReader()::read, folders -> 0,
                config -> data, out, out);
        int code = FencerowCommand.run(surroundings, command);
        System.out.printf(Locale.ROOT, "%s: code %d, %.1f s by the wall, %.1f s of processors, heap at most %d MiB%n",
                what, code, Duration.ofNanos(System.nanoTime() - start).toMillis() / 1000.0,
                busy().minus(busy).toMillis() / 1000.0,
                Runtime.getRuntime().maxMemory() >> 20);
    }

    private static Duration busy() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }
}

package fencerow.printing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How long a list takes to become a PDF: the first after a start, then warm; and whether many leave memory flat. A
 * plain main method, for the first one cannot be measured by a harness that warms up.
 *
 * <p>{@code mvn -Pbench test-compile}, then this class on the test class path.
 */
public final class PaperBench {
    private static final List<Sheet> TWO_PAGES = List.of(Sheet.LIST, Sheet.COMPARISON);
    private static final int WARM_UP = 60;
    private static final int MEASURED = 200;
    private static final int MANY = 1000;

    private PaperBench() {}

    /** Measures and prints. */
    public static void main(String[] args) {
        var handouts = new RandomHandouts(1, Shipped.ENGLISH);
        Handout handout = handouts.next();
        long start = System.nanoTime();
        Paper paper = Paper.of(Shipped.PAPER, 14, 4, System.out::println);
        print(paper, handout, handouts);
        say("first, templates and faces read: %.0f ms", (System.nanoTime() - start) / 1e6);
        for (int i = 0; i < WARM_UP; i++) {
            print(paper, handouts.next(), handouts);
        }
        double[] millis = new double[MEASURED];
        for (int i = 0; i < MEASURED; i++) {
            Handout next = handouts.next();
            long before = System.nanoTime();
            print(paper, next, handouts);
            millis[i] = (System.nanoTime() - before) / 1e6;
        }
        Arrays.sort(millis);
        say("warm: median %.0f ms, p95 %.0f ms", millis[MEASURED / 2], millis[MEASURED * 95 / 100]);
        long used = used();
        for (int i = 0; i < MANY; i++) {
            print(paper, handouts.next(), handouts);
        }
        say("memory after %d more: %+.1f MiB", MANY, (used() - used) / 1048576.0);
    }

    private static void print(Paper paper, Handout handout, RandomHandouts handouts) {
        paper.print(handout, handouts.phrases(), PageFormat.LETTER, TWO_PAGES);
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static void say(String pattern, Object... values) {
        System.out.println(String.format(Locale.ROOT, pattern, values));
    }
}

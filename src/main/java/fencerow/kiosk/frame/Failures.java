package fencerow.kiosk.frame;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How failures are written down: where and what kind, never the message, which may hold what a shopper typed. */
public final class Failures {
    private static final System.Logger LOG = System.getLogger(Failures.class.getName());
    private static final int DEEPEST = 5;

    private Failures() {}

    /** Writes a failure into the log. */
    static void write(Throwable failure) {
        LOG.log(System.Logger.Level.ERROR, withoutWords(failure));
    }

    /** Kinds and places of a failure and of what caused it. */
    public static String withoutWords(Throwable failure) {
        StringBuilder text = new StringBuilder("A failure");
        Throwable each = failure;
        for (int depth = 0; each != null && depth < DEEPEST; depth++) {
            text.append(depth == 0 ? ": " : "\ncaused by: ").append(each.getClass().getName()).append('\n');
            text.append(Arrays.stream(each.getStackTrace()).map(line -> "    at " + line)
                    .collect(Collectors.joining("\n")));
            each = each.getCause();
        }
        return text.toString();
    }
}

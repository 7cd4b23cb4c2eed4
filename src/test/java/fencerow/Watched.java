package fencerow;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** A process of {@link WatchedKiosk} and what it says of its screen. */
record Watched(Process process, BufferedReader answers, OutputStream questions) {
    private static final int PATIENCE_SECONDS = 60;

    static Watched of(Process process) {
        var answers = new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8);
        return new Watched(process, new BufferedReader(answers), process.getOutputStream());
    }

    /** The window, then what can be touched. */
    List<String> state() throws IOException {
        questions.write('\n');
        questions.flush();
        String line;
        do {
            line = answers.readLine();
            assertNotNull(line, "the process has ended");
        } while (!line.startsWith(WatchedKiosk.ANSWER));
        return Arrays.asList(line.split("\t", -1)).subList(1, line.split("\t", -1).length);
    }

    List<String> waitFor(Predicate<List<String>> so, String what) throws IOException, InterruptedException {
        List<String> state = state();
        for (int i = 0; !so.test(state); i++) {
            assertTrue(i < PATIENCE_SECONDS * 5, what + " did not come: " + state);
            TimeUnit.MILLISECONDS.sleep(200);
            state = state();
        }
        return state;
    }

    void touch(String name, TestDesktop desktop) throws IOException, InterruptedException {
        // Longer than the guard against a finger that bounces, and until it lies where it will be.
        TimeUnit.SECONDS.sleep(1);
        List<String> state = waitFor(seen -> seen.stream().anyMatch(each -> isThere(each, name)), name);
        String place = state.stream().filter(each -> isThere(each, name)).findFirst().orElseThrow();
        String[] at = place.substring(place.lastIndexOf('@') + 1).split(",", -1);
        desktop.touch(Integer.parseInt(at[0]), Integer.parseInt(at[1]));
    }

    private static boolean isThere(String touch, String name) {
        return touch.startsWith(name) && !touch.endsWith("@0,0");
    }

    static Predicate<List<String>> can(String name) {
        return state -> state.stream().anyMatch(each -> each.startsWith(name));
    }
}

package fencerow;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A screen of the tests' own with Debian's openbox as its window manager: Xvfb on a free display, keys and touches by
 * xdotool. Whatever was started on it ends with it.
 */
final class TestDesktop implements AutoCloseable {
    static final int WIDTH = 1280;
    static final int HEIGHT = 800;

    private static final List<String> PROGRAMS = List.of("Xvfb", "openbox", "xdotool");
    private static final int PATIENCE_SECONDS = 20;

    private final Path folder;
    private final Deque<Process> started = new ArrayDeque<>();
    private final String display;

    private TestDesktop(Path folder, String display) {
        this.folder = folder;
        this.display = display;
    }

    private TestDesktop(Path folder) throws IOException {
        this.folder = folder;
        Process screen = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", WIDTH + "x" + HEIGHT + "x24",
                "-fbdir", folder.toString(), "-nolisten", "tcp").redirectError(ProcessBuilder.Redirect.DISCARD).start();
        started.push(screen);
        this.display = ":" + new BufferedReader(
                new InputStreamReader(screen.getInputStream(), StandardCharsets.US_ASCII)).readLine();
    }

    /** What is not installed of what it takes. */
    static List<String> missing() {
        return missing(PROGRAMS);
    }

    /** Those of the programs that are not installed. */
    static List<String> missing(List<String> programs) {
        return programs.stream()
                .filter(program -> Arrays.stream(System.getenv("PATH").split(":", -1))
                        .noneMatch(place -> Files.isExecutable(Path.of(place, program))))
                .toList();
    }

    /** Starts it; its files go into the folder. */
    static TestDesktop start(Path folder) throws IOException {
        var desktop = new TestDesktop(folder);
        desktop.manageWindows();
        return desktop;
    }

    /** Programs on a display that is there, without a window manager. */
    static TestDesktop on(String display, Path folder) {
        return new TestDesktop(folder, display);
    }

    /** Starts the window manager. */
    void manageWindows() throws IOException {
        // Not what the user who runs the tests may have set.
        run("openbox", "--config-file", "/etc/xdg/openbox/rc.xml");
    }

    /** Starts a program on it; what it says on standard error goes into a file beside the others. */
    Process run(String... command) throws IOException {
        Path log = folder.resolve(Path.of(command[0]).getFileName() + "-" + started.size() + ".log");
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(log.toFile());
        builder.environment().putAll(Map.of("DISPLAY", display, "HOME", folder.toString()));
        builder.environment().remove("WAYLAND_DISPLAY");
        Process process = builder.start();
        started.push(process);
        return process;
    }

    /** Starts {@link WatchedKiosk} on it. */
    Process watched(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Dprism.order=sw",
                "-Djava.awt.headless=true", "-Duser.language=en", "-Duser.country=US", "-Dfile.encoding=UTF-8",
                "-cp", System.getProperty("java.class.path"), WatchedKiosk.class.getName()));
        command.addAll(List.of(arguments));
        return run(command.toArray(String[]::new));
    }

    /** Presses keys one after the other, each as xdotool writes it. */
    void press(String keys) throws IOException, InterruptedException {
        for (String key : keys.split(" ", -1)) {
            xdotool("key", key);
            // A window manager's menu has to be there before it can get the next key.
            TimeUnit.MILLISECONDS.sleep(500);
        }
    }

    /** Puts a finger down and lifts it. */
    void touch(int x, int y) throws IOException, InterruptedException {
        xdotool("mousemove", String.valueOf(x), String.valueOf(y), "click", "1");
    }

    private void xdotool(String... arguments) throws IOException, InterruptedException {
        Process process = run(Stream.concat(Stream.of("xdotool"), Arrays.stream(arguments)).toArray(String[]::new));
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
            throw new IOException("xdotool failed: " + List.of(arguments));
        }
        started.remove(process);
    }

    /** The share of the screen's pixels, 0 to 1, that have a colour (24 bits: red, green, blue). */
    double share(int colour) {
        try {
            // Xvfb keeps its picture as an X window dump: a header of 32-bit words, a colour map, rows of pixels.
            byte[] dump = Files.readAllBytes(folder.resolve("Xvfb_screen0"));
            ByteBuffer header = ByteBuffer.wrap(dump);
            int from = header.getInt(0) + 12 * header.getInt(19 * 4);
            int row = header.getInt(12 * 4);
            int found = 0;
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    int at = from + y * row + 4 * x;
                    int pixel = (dump[at + 2] & 0xff) << 16 | (dump[at + 1] & 0xff) << 8 | dump[at] & 0xff;
                    found += pixel == colour ? 1 : 0;
                }
            }
            return (double) found / (WIDTH * HEIGHT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        while (!started.isEmpty()) {
            Process process = started.pop();
            process.destroy();
            try {
                if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                }
            } catch (InterruptedException e) {
                // The test ran out of time: the others are to end all the same.
                process.destroyForcibly();
                Thread.currentThread().interrupt();
            }
        }
    }
}

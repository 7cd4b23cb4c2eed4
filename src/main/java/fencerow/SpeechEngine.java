package fencerow;

import fencerow.kiosk.frame.Speaker;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/**
 * Speaks through the eSpeak NG program where it is installed: one process a line. The words go in on standard input, so
 * that they never stand in the list of processes.
 *
 * @param program where it is; empty if it is not installed
 */
record SpeechEngine(Optional<Path> program) implements Speaker {
    private static final String NAME = "espeak-ng";
    private static final Map<String, String> VOICES = Map.of("en", "en-us", "es", "es-419");
    private static final int WORDS_PER_MINUTE = 150;

    /** The one installed here. */
    static SpeechEngine installed() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return new SpeechEngine(Arrays.stream(path.split(System.getProperty("path.separator")))
                .map(folder -> Path.of(folder, NAME))
                .filter(Files::isExecutable)
                .findFirst());
    }

    /** The engine's own measure, of which 100 is usual and 200 the most. */
    private static int amplitude(Loudness loudness) {
        return switch (loudness) {
            case SOFTEST -> 30;
            case SOFT -> 60;
            case NORMAL -> 100;
            case LOUD -> 140;
            case LOUDEST -> 200;
        };
    }

    @Override
    public boolean isThere() {
        return program.isPresent();
    }

    @Override
    public void say(String language, String words, Loudness loudness) throws IOException, InterruptedException {
        Path engine = program.orElseThrow(() -> new IOException("[" + NAME + "] is not installed"));
        Process process = new ProcessBuilder(engine.toString(), "-v", VOICES.getOrDefault(language, "en-us"),
                "-a", String.valueOf(amplitude(loudness)), "-s", String.valueOf(WORDS_PER_MINUTE), "--stdin")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            try (OutputStream in = process.getOutputStream()) {
                in.write(words.getBytes(StandardCharsets.UTF_8));
            }
            int result = process.waitFor();
            if (result != 0) {
                throw new IOException("[" + NAME + "] gave up with code " + result + "; check the sound");
            }
        } finally {
            process.destroyForcibly();
        }
    }
}

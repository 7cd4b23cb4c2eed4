package fencerow.backoffice;

import java.io.Console;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Writers to the streams of this process: UTF-8 into files and pipes, the terminal's own encoding to a terminal. */
public final class StandardStreams {
    private StandardStreams() {}

    /** Where results go. */
    public static PrintWriter out() {
        return writer(System.out);
    }

    /** Where complaints go. */
    public static PrintWriter err() {
        return writer(System.err);
    }

    private static PrintWriter writer(PrintStream stream) {
        Charset charset = Optional.ofNullable(System.console()).map(Console::charset).orElse(StandardCharsets.UTF_8);
        return new PrintWriter(new OutputStreamWriter(stream, charset), true);
    }
}

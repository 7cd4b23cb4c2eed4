package fencerow.backoffice;

import fencerow.desk.Pin;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Makes the hash of a PIN. It is asked for, not given as an argument: arguments are seen by others. */
@Command(name = "pin", mixinStandardHelpOptions = true,
        description = "Asks for a PIN of 4 to 8 digits and prints the line for showroom.yaml that opens the staff area"
                + " to it.")
final class PinCommand implements Callable<Integer> {
    private final FencerowCommand top;

    PinCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws WrongUseException, IOException {
        String digits = ask().strip();
        try {
            var line = new PinLine("pin: {hash: \"" + Pin.hash(digits, new SecureRandom()).setting() + "\"}");
            top.print(line, () -> line.setting() + "\n");
            return FencerowCommand.FINE;
        } catch (IllegalArgumentException e) {
            throw new WrongUseException(String.valueOf(e.getMessage()));
        }
    }

    private static String ask() throws IOException {
        Optional<Console> console = Optional.ofNullable(System.console());
        if (console.isPresent()) {
            return new String(Objects.requireNonNullElse(console.get().readPassword("PIN: "), new char[0]));
        }
        var in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        return Objects.requireNonNullElse(in.readLine(), "");
    }

    /**
     * What {@code pin --json} prints.
     *
     * @param setting the line for {@code showroom.yaml}
     */
    record PinLine(String setting) {}
}

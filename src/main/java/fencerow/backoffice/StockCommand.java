package fencerow.backoffice;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The stock book from and to files. */
@Command(name = "stock", mixinStandardHelpOptions = true,
        description = "Takes stock lists into the kiosk's stock book, and writes it out.")
final class StockCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say what to do: stock import FILE, or stock export FILE");
    }
}

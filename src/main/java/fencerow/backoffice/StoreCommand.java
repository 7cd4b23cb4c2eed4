package fencerow.backoffice;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The database itself. */
@Command(name = "store", mixinStandardHelpOptions = true,
        description = "Readies the server that several kiosks share, and moves the database there or back.")
final class StoreCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "say what to do: store migrate, or store move --to server|file");
    }
}

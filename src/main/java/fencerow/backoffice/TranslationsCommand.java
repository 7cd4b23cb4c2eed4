package fencerow.backoffice;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Keeps translations in step with the original; its commands do. */
@Command(name = "translations", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "COMMAND",
        description = "Keeps translations in step with the English words; check says which are out of step.")
final class TranslationsCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "nothing is said of what to do with them; add accept");
    }
}

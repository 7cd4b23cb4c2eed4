package fencerow.backoffice;

import java.io.PrintWriter;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Says what went wrong: what, where, and what to do. Never a stack trace. */
final class Complaints {
    private Complaints() {}

    /** The command line itself is wrong. */
    static int wrongUse(ParameterException e, String[] arguments) {
        PrintWriter err = e.getCommandLine().getErr();
        err.println("fencerow: " + e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
        err.println("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return FencerowCommand.WRONG_USE;
    }

    /** A command could not do its work. */
    static int failed(Exception e, CommandLine line, ParseResult parsed) {
        PrintWriter err = line.getErr();
        if (e instanceof UnreadableException unreadable) {
            unreadable.problems().forEach(err::println);
        } else if (e instanceof FailedException || e instanceof WrongUseException) {
            err.println("fencerow: " + e.getMessage());
        } else {
            String where = Optional.of(e.getStackTrace())
                    .filter(trace -> trace.length > 0)
                    .map(trace -> " (" + trace[0] + ")")
                    .orElse("");
            err.println("fencerow: a mistake in the program: " + e + where
                    + "; please report this line and what you typed");
        }
        return e instanceof WrongUseException ? FencerowCommand.WRONG_USE : FencerowCommand.NOT_FINE;
    }
}

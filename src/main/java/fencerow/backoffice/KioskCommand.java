package fencerow.backoffice;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Opens the kiosk. */
@Command(name = "kiosk", mixinStandardHelpOptions = true, description = "Opens the kiosk.")
final class KioskCommand implements Callable<Integer> {
    private final FencerowCommand top;

    KioskCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws WrongUseException, FailedException {
        return top.launchKiosk();
    }
}

package fencerow.backoffice;

import fencerow.backoffice.document.DoctorDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Says what this machine lacks for a kiosk. */
@Command(name = "doctor", mixinStandardHelpOptions = true,
        description = "Says what this machine lacks for a kiosk: display, libraries, printer, sound, disk, content,"
                + " database.")
final class DoctorCommand implements Callable<Integer> {
    private final FencerowCommand top;

    DoctorCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() {
        Surroundings around = top.surroundings();
        List<DoctorDocument.Check> checks = new ArrayList<>(
                new MachineChecks(around.machine(), Runtime.getRuntime().maxMemory()).all());
        checks.addAll(new ShowroomChecks(top.folders(), around.machine(), around.clock()).all());
        var document = DoctorDocument.of(checks);
        top.print(document, () -> text(document));
        return document.fine() ? FencerowCommand.FINE : FencerowCommand.NOT_FINE;
    }

    private static String text(DoctorDocument document) {
        var sheet = new TextSheet();
        for (DoctorDocument.Check check : document.checks()) {
            sheet.line(0, "[" + check.state() + "] " + check.about() + ": " + check.what());
            if (!check.whatToDo().isEmpty()) {
                sheet.line(4, check.whatToDo());
            }
        }
        sheet.heading(document.fine() ? "A kiosk can run here." : "A kiosk cannot do its work here yet.");
        return sheet.toString();
    }
}

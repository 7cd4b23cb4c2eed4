package fencerow.printing;

import com.hp.jipp.encoding.IppPacket;
import com.hp.jipp.encoding.Tag;
import com.hp.jipp.model.JobState;
import com.hp.jipp.model.PrinterState;
import com.hp.jipp.model.Status;
import com.hp.jipp.model.Types;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Optional;

/**
 * A printer or a print server's queue that speaks IPP (RFC 8010, RFC 8011), PDF in, states and reasons out.
 *
 * @param address {@code ipp://} or {@code ipps://}, as the printer tells it
 */
record IppPrinter(URI address) implements Printer {
    private static final String PDF = "application/pdf";
    private static final String USER = "fencerow";

    @Override
    public Optional<PrinterTrouble> findTrouble() {
        return findTrouble(false);
    }

    private Optional<PrinterTrouble> findTrouble(boolean working) {
        try {
            IppPacket answer = IppConnection.QUICK.ask(address, IppPacket.getPrinterAttributes(
                            address,
                            Types.printerState,
                            Types.printerStateReasons,
                            Types.printerIsAcceptingJobs,
                            Types.documentFormatSupported)
                    .putOperationAttributes(Types.requestingUserName.of(USER))
                    .build());
            return trouble(answer, working);
        } catch (IOException e) {
            return Optional.of(IppConnection.trouble(e));
        }
    }

    private static Optional<PrinterTrouble> trouble(IppPacket answer, boolean working) {
        if (!isOk(answer)) {
            return Optional.of(refusal(answer));
        }
        List<String> formats = answer.getStrings(Tag.printerAttributes, Types.documentFormatSupported);
        if (!formats.isEmpty() && !formats.contains(PDF)) {
            return Optional.of(PrinterTrouble.WRONG_FORMAT);
        }
        List<String> reasons = answer.getStrings(Tag.printerAttributes, Types.printerStateReasons);
        boolean stopped = PrinterState.stopped.equals(answer.getValue(Tag.printerAttributes, Types.printerState));
        Optional<PrinterTrouble> worst = PrinterTrouble.worst(stopped, working, reasons);
        if (Boolean.FALSE.equals(answer.getValue(Tag.printerAttributes, Types.printerIsAcceptingJobs))
                && worst.filter(PrinterTrouble::stops).isEmpty()) {
            return Optional.of(PrinterTrouble.NOT_ACCEPTING);
        }
        return worst;
    }

    private static boolean isOk(IppPacket answer) {
        return answer.getStatus().getCode() < Status.clientErrorBadRequest.getCode();
    }

    private static PrinterTrouble refusal(IppPacket answer) {
        Status status = answer.getStatus();
        if (status.equals(Status.clientErrorNotFound) || status.equals(Status.clientErrorGone)) {
            return PrinterTrouble.NOT_FOUND;
        }
        if (status.equals(Status.clientErrorDocumentFormatNotSupported)) {
            return PrinterTrouble.WRONG_FORMAT;
        }
        return status.equals(Status.serverErrorNotAcceptingJobs)
                ? PrinterTrouble.NOT_ACCEPTING
                : PrinterTrouble.REFUSED;
    }

    /** A job is only sent to a printer that can print it now, so that none waits there for the next shopper. */
    @Override
    public PrintOutcome print(Printout pages, PageFormat format, int copies) {
        Optional<PrinterTrouble> stopping = findTrouble().filter(PrinterTrouble::stops);
        if (stopping.isPresent()) {
            return new PrintOutcome.Failed(stopping.get());
        }
        IppPacket job = IppPacket.printJob(address)
                .putOperationAttributes(
                        Types.requestingUserName.of(USER),
                        Types.jobName.of("list"),
                        Types.documentFormat.of(PDF))
                .putJobAttributes(
                        Types.copies.of(copies),
                        Types.media.of(format.size().ippName()),
                        Types.printScaling.of("none"))
                .build();
        try {
            IppPacket answer = IppConnection.PATIENT.send(address, job, pages.pdf());
            if (!isOk(answer)) {
                return new PrintOutcome.Failed(refusal(answer));
            }
            Integer number = answer.getValue(Tag.jobAttributes, Types.jobId);
            return number == null
                    ? new PrintOutcome.HandedOver()
                    : follow(new PrintOutcome.Queued(number, Optional.empty()));
        } catch (IOException e) {
            return new PrintOutcome.Failed(IppConnection.trouble(e));
        }
    }

    @Override
    public PrintOutcome follow(PrintOutcome.Queued job) {
        try {
            IppPacket answer = IppConnection.QUICK.ask(address, IppPacket.getJobAttributes(
                            address, job.job(), Types.jobState, Types.jobStateReasons)
                    .putOperationAttributes(Types.requestingUserName.of(USER))
                    .build());
            if (!isOk(answer)) {
                // Printers forget jobs that they have printed.
                return refusal(answer) == PrinterTrouble.NOT_FOUND ? new PrintOutcome.Printed() : waiting(job);
            }
            JobState state = answer.getValue(Tag.jobAttributes, Types.jobState);
            if (JobState.completed.equals(state)) {
                return new PrintOutcome.Printed();
            }
            if (JobState.canceled.equals(state)) {
                return new PrintOutcome.Failed(PrinterTrouble.CANCELLED);
            }
            if (JobState.aborted.equals(state)) {
                return new PrintOutcome.Failed(PrinterTrouble.REFUSED);
            }
            return JobState.processingStopped.equals(state) ? stopped(job) : waiting(job);
        } catch (IOException e) {
            return new PrintOutcome.Queued(job.job(), Optional.of(IppConnection.trouble(e)));
        }
    }

    private PrintOutcome waiting(PrintOutcome.Queued job) {
        return new PrintOutcome.Queued(job.job(), findTrouble(true));
    }

    /** A server can stop a job while its printer is well. */
    private PrintOutcome stopped(PrintOutcome.Queued job) {
        return new PrintOutcome.Queued(job.job(), findTrouble(true).or(() -> Optional.of(PrinterTrouble.TROUBLE)));
    }

    @Override
    public PrintOutcome cancel(PrintOutcome.Queued job) {
        try {
            IppPacket answer = IppConnection.QUICK.ask(address, IppPacket.cancelJob(address, job.job())
                    .putOperationAttributes(Types.requestingUserName.of(USER))
                    .build());
            // What can no longer be cancelled is printed, or as good as.
            return isOk(answer) ? new PrintOutcome.Failed(PrinterTrouble.CANCELLED) : follow(job);
        } catch (IOException e) {
            return new PrintOutcome.Queued(job.job(), Optional.of(IppConnection.trouble(e)));
        }
    }
}

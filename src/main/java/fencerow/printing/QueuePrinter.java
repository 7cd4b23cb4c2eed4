package fencerow.printing;

import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.attribute.standard.PrinterIsAcceptingJobs;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/**
 * A print queue of the platform, by name. The platform takes pages, and says little of what becomes of them.
 *
 * @param name as the platform lists it, letter case aside
 */
record QueuePrinter(String name) implements Printer {
    @Override
    public Optional<PrinterTrouble> findTrouble() {
        Optional<PrintService> queue = findQueue();
        if (queue.isEmpty()) {
            return Optional.of(PrinterTrouble.NOT_FOUND);
        }
        boolean closed = PrinterIsAcceptingJobs.NOT_ACCEPTING_JOBS.equals(
                queue.get().getAttribute(PrinterIsAcceptingJobs.class));
        return closed ? Optional.of(PrinterTrouble.NOT_ACCEPTING) : Optional.empty();
    }

    private Optional<PrintService> findQueue() {
        return Arrays.stream(PrintServiceLookup.lookupPrintServices(null, null))
                .filter(service -> service.getName().equalsIgnoreCase(name))
                .findFirst();
    }

    @Override
    public PrintOutcome print(Printout pages, PageFormat format, int copies) {
        Optional<PrinterTrouble> trouble = findTrouble();
        if (trouble.isPresent()) {
            return new PrintOutcome.Failed(trouble.get());
        }
        try (PDDocument document = Loader.loadPDF(pages.pdf())) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(findQueue().orElseThrow(() -> new PrinterException("the queue has gone")));
            job.setJobName("list");
            job.setCopies(copies);
            job.setPageable(new PDFPageable(document));
            job.print();
            return new PrintOutcome.HandedOver();
        } catch (PrinterAbortException e) {
            return new PrintOutcome.Failed(PrinterTrouble.CANCELLED);
        } catch (PrinterException | IOException e) {
            return new PrintOutcome.Failed(PrinterTrouble.TROUBLE);
        }
    }

    @Override
    public PrintOutcome follow(PrintOutcome.Queued job) {
        return new PrintOutcome.HandedOver();
    }

    @Override
    public PrintOutcome cancel(PrintOutcome.Queued job) {
        return new PrintOutcome.HandedOver();
    }
}

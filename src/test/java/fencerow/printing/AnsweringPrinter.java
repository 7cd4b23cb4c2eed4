package fencerow.printing;

import com.hp.jipp.encoding.IppInputStream;
import com.hp.jipp.encoding.IppOutputStream;
import com.hp.jipp.encoding.IppPacket;
import com.hp.jipp.encoding.Tag;
import com.hp.jipp.model.JobState;
import com.hp.jipp.model.Operation;
import com.hp.jipp.model.PrinterState;
import com.hp.jipp.model.Status;
import com.hp.jipp.model.Types;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/** A printer that answers IPP as it is told to, and prints nothing. */
final class AnsweringPrinter implements AutoCloseable {
    private static final int JOB = 7;

    private final HttpServer server;
    private final State state;
    private final AtomicReference<byte[]> document = new AtomicReference<>(new byte[0]);
    private final AtomicReference<IppPacket> job = new AtomicReference<>();
    private final AtomicInteger cancelled = new AtomicInteger();

    /**
     * What it says of itself.
     *
     * @param jobState of whatever job it was given
     * @param answer   to a job
     * @param delay    before each answer, in milliseconds
     */
    record State(
            PrinterState printer,
            List<String> reasons,
            boolean accepting,
            List<String> formats,
            JobState jobState,
            Status answer,
            int delay) {
        static final State IDLE = new State(PrinterState.idle, List.of("none"), true,
                List.of("application/pdf", "image/pwg-raster"), JobState.completed, Status.successfulOk, 0);

        State stopped(String... reasons) {
            return new State(PrinterState.stopped, List.of(reasons), accepting, formats, jobState, answer, delay);
        }

        State says(String... reasons) {
            return new State(printer, List.of(reasons), accepting, formats, jobState, answer, delay);
        }

        State refusing(Status status) {
            return new State(printer, reasons, accepting, formats, jobState, status, delay);
        }

        State closed() {
            return new State(printer, reasons, false, formats, jobState, answer, delay);
        }

        State reading(String... others) {
            return new State(printer, reasons, accepting, List.of(others), jobState, answer, delay);
        }

        State withJob(JobState other) {
            return new State(printer, reasons, accepting, formats, other, answer, delay);
        }

        State slow(int millis) {
            return new State(printer, reasons, accepting, formats, jobState, answer, millis);
        }
    }

    AnsweringPrinter(State state) throws IOException {
        this.state = state;
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/ipp/print", this::answer);
        server.start();
    }

    URI address() {
        return URI.create("ipp://localhost:" + server.getAddress().getPort() + "/ipp/print");
    }

    byte[] document() {
        return document.get();
    }

    IppPacket job() {
        return job.get();
    }

    int cancelled() {
        return cancelled.get();
    }

    private void answer(HttpExchange exchange) throws IOException {
        var in = new IppInputStream(exchange.getRequestBody());
        IppPacket request = in.readPacket();
        IppPacket response = respond(request, in.readAllBytes());
        var bytes = new ByteArrayOutputStream();
        new IppOutputStream(bytes).write(response);
        try {
            Thread.sleep(state.delay());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        exchange.getResponseHeaders().add("Content-Type", "application/ipp");
        exchange.sendResponseHeaders(200, bytes.size());
        exchange.getResponseBody().write(bytes.toByteArray());
        exchange.close();
    }

    private IppPacket respond(IppPacket request, byte[] rest) {
        Operation operation = request.getOperation();
        if (operation.equals(Operation.getPrinterAttributes)) {
            return IppPacket.response(Status.successfulOk)
                    .putPrinterAttributes(
                            Types.printerState.of(state.printer()),
                            Types.printerStateReasons.of(state.reasons()),
                            Types.printerIsAcceptingJobs.of(state.accepting()),
                            Types.documentFormatSupported.of(state.formats()))
                    .build();
        }
        if (operation.equals(Operation.printJob)) {
            document.set(rest);
            job.set(request);
            return state.answer().equals(Status.successfulOk)
                    ? IppPacket.jobResponse(state.answer(), JOB, address(), JobState.pending).build()
                    : IppPacket.response(state.answer()).build();
        }
        if (operation.equals(Operation.cancelJob)) {
            cancelled.incrementAndGet();
            return IppPacket.response(Status.successfulOk).build();
        }
        return IppPacket.response(Status.successfulOk)
                .putAttributes(Tag.jobAttributes, Types.jobId.of(JOB), Types.jobState.of(state.jobState()))
                .build();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}

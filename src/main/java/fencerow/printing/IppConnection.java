package fencerow.printing;

import com.hp.jipp.encoding.IppInputStream;
import com.hp.jipp.encoding.IppOutputStream;
import com.hp.jipp.encoding.IppPacket;
import java.io.ByteArrayOutputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.time.Duration;

/**
 * Carries IPP messages over HTTP (RFC 8010 section 3.1).
 *
 * @param answerWithin how long to wait for the answer
 */
record IppConnection(Duration answerWithin) {
    /** For questions: answers in words within a second. */
    static final IppConnection QUICK = new IppConnection(Duration.ofMillis(800));
    /** For documents. */
    static final IppConnection PATIENT = new IppConnection(Duration.ofSeconds(20));

    private static final int CONNECT_MILLIS = 700;
    private static final int DEFAULT_PORT = 631;
    private static final String IPP = "application/ipp";

    /** Sends a message without a document. */
    IppPacket ask(URI address, IppPacket message) throws IOException {
        return send(address, message, new byte[0]);
    }

    /**
     * Sends a message and the document after it.
     *
     * @throws FileNotFoundException if nothing answers at this path
     * @throws IOException           if the printer cannot be reached or does not answer in IPP
     */
    IppPacket send(URI address, IppPacket message, byte[] document) throws IOException {
        var head = new ByteArrayOutputStream();
        new IppOutputStream(head).write(message);
        HttpURLConnection connection = (HttpURLConnection) web(address).toURL().openConnection();
        try {
            connection.setConnectTimeout(CONNECT_MILLIS);
            connection.setReadTimeout((int) answerWithin.toMillis());
            connection.setUseCaches(false);
            connection.setDoOutput(true);
            connection.setRequestMethod("POST");
            connection.setRequestProperty("Content-Type", IPP);
            connection.setRequestProperty("Accept", IPP);
            connection.setFixedLengthStreamingMode(head.size() + document.length);
            try (OutputStream out = connection.getOutputStream()) {
                head.writeTo(out);
                out.write(document);
            }
            try (InputStream in = connection.getInputStream()) {
                return new IppInputStream(in).readPacket();
            }
        } finally {
            connection.disconnect();
        }
    }

    /** The web address of an IPP address: the same host and path, port 631 where none is given. */
    static URI web(URI address) {
        String scheme = address.getScheme().equalsIgnoreCase("ipps") ? "https" : "http";
        int port = address.getPort() < 0 ? DEFAULT_PORT : address.getPort();
        String path = address.getRawPath() == null || address.getRawPath().isEmpty() ? "/" : address.getRawPath();
        return URI.create(scheme + "://" + address.getHost() + ":" + port + path);
    }

    /** What a failure to get an answer means. */
    static PrinterTrouble trouble(IOException e) {
        return e instanceof FileNotFoundException ? PrinterTrouble.NOT_FOUND : PrinterTrouble.OFFLINE;
    }
}

package fencerow;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.Channels;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * An X server whose screens can be plugged in, unplugged and set to other sizes: Debian's Xvnc, told over the protocol
 * that its viewers speak (RFC 6143; changing the screens is the message SetDesktopSize of its registered extensions).
 */
final class TestScreens implements AutoCloseable {
    private static final int RAW = 0;
    private static final int EXTENDED_DESKTOP_SIZE = -308;
    private static final int PATIENCE_SECONDS = 20;

    private final Path socket;
    private final Process server;
    private final String display;

    /**
     * A part of the desktop that is a screen.
     *
     * @param id that tells it from others; it stays a screen's own
     */
    record Part(int id, int x, int y, int width, int height) {}

    /** Colours of a picture, row by row. */
    record Picture(int width, int height, int[] colours) {
        /** The share of its pixels, 0 to 1, that have a colour (24 bits: red, green, blue). */
        double share(int colour) {
            int found = 0;
            for (int each : colours) {
                found += each == colour ? 1 : 0;
            }
            return (double) found / colours.length;
        }
    }

    /** One viewer's connection. */
    private record Viewer(SocketChannel channel, DataInputStream in, DataOutputStream out, int width, int height)
            implements AutoCloseable {
        @Override
        public void close() throws IOException {
            channel.close();
        }
    }

    /** Starts it with one screen; nobody but this user can look at it. */
    TestScreens(Path folder, int width, int height) throws IOException {
        this.socket = folder.resolve("screens");
        this.server = new ProcessBuilder("Xvnc", "-displayfd", "1", "-geometry", width + "x" + height, "-depth", "24",
                "-SecurityTypes", "None", "-AlwaysShared", "-rfbport", "-1", "-rfbunixpath", socket.toString(),
                "-nolisten", "tcp").redirectError(folder.resolve("screens.log").toFile()).start();
        String number = new BufferedReader(
                new InputStreamReader(server.getInputStream(), StandardCharsets.US_ASCII)).readLine();
        if (number == null) {
            throw new IOException("Xvnc did not start; see " + folder.resolve("screens.log"));
        }
        this.display = ":" + number;
    }

    /** What programs are to show themselves on. */
    String display() {
        return display;
    }

    private Viewer look(int... kinds) throws IOException {
        SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX);
        channel.connect(UnixDomainSocketAddress.of(socket));
        var in = new DataInputStream(new BufferedInputStream(Channels.newInputStream(channel)));
        // Each message has to come whole: this server loses its place in one that comes by bytes.
        var out = new DataOutputStream(new BufferedOutputStream(Channels.newOutputStream(channel)));
        in.readNBytes(12);
        out.write("RFB 003.008\n".getBytes(StandardCharsets.US_ASCII));
        out.flush();
        in.readNBytes(in.readUnsignedByte());
        int noSecurity = 1;
        out.writeByte(noSecurity);
        out.flush();
        if (in.readInt() != 0) {
            throw new IOException("Xvnc lets nobody in");
        }
        int shared = 1;
        out.writeByte(shared);
        out.flush();
        int width = in.readUnsignedShort();
        int height = in.readUnsignedShort();
        in.readNBytes(16);
        in.readNBytes(in.readInt());
        int setEncodings = 2;
        out.writeByte(setEncodings);
        out.writeByte(0);
        out.writeShort(kinds.length);
        for (int kind : kinds) {
            out.writeInt(kind);
        }
        out.flush();
        return new Viewer(channel, in, out, width, height);
    }

    private static void ask(Viewer viewer, int width, int height) throws IOException {
        int updateRequest = 3;
        viewer.out().writeByte(updateRequest);
        viewer.out().writeByte(0);
        viewer.out().writeShort(0);
        viewer.out().writeShort(0);
        viewer.out().writeShort(width);
        viewer.out().writeShort(height);
        viewer.out().flush();
    }

    /** Makes these the screens; where they end, the desktop ends. */
    void set(List<Part> parts) throws IOException {
        int width = parts.stream().mapToInt(part -> part.x() + part.width()).max().orElseThrow();
        int height = parts.stream().mapToInt(part -> part.y() + part.height()).max().orElseThrow();
        try (Viewer viewer = look(RAW, EXTENDED_DESKTOP_SIZE)) {
            DataOutputStream out = viewer.out();
            int setDesktopSize = 251;
            out.writeByte(setDesktopSize);
            out.writeByte(0);
            out.writeShort(width);
            out.writeShort(height);
            out.writeByte(parts.size());
            out.writeByte(0);
            for (Part part : parts) {
                out.writeInt(part.id());
                out.writeShort(part.x());
                out.writeShort(part.y());
                out.writeShort(part.width());
                out.writeShort(part.height());
                out.writeInt(0);
            }
            out.flush();
            do {
                // No more than there is in any case: the desktop is another size by now.
                ask(viewer, 1, 1);
            } while (!isAnswered(viewer, new int[0]));
        }
    }

    /** Reads one message. @return whether it says that the wish for other screens was granted */
    private static boolean isAnswered(Viewer viewer, int[] colours) throws IOException {
        boolean answered = false;
        DataInputStream in = viewer.in();
        int update = 0;
        if (in.readUnsignedByte() != update) {
            throw new IOException("Xvnc said something else than what is shown");
        }
        in.readUnsignedByte();
        int rectangles = in.readUnsignedShort();
        for (int i = 0; i < rectangles; i++) {
            int x = in.readUnsignedShort();
            int y = in.readUnsignedShort();
            int width = in.readUnsignedShort();
            int height = in.readUnsignedShort();
            int kind = in.readInt();
            if (kind == EXTENDED_DESKTOP_SIZE) {
                int screens = in.readUnsignedByte();
                in.readNBytes(3 + 16 * screens);
                int askedByUs = 1;
                if (x == askedByUs && y != 0) {
                    throw new IOException("Xvnc refuses such screens with " + y);
                }
                answered |= x == askedByUs;
            } else {
                byte[] raw = in.readNBytes(4 * width * height);
                for (int at = 0; at < width * height; at++) {
                    // Little-endian, as this server has it.
                    int colour = (raw[4 * at + 2] & 0xff) << 16 | (raw[4 * at + 1] & 0xff) << 8 | raw[4 * at] & 0xff;
                    int target = (y + at / width) * viewer.width() + x + at % width;
                    if (target < colours.length) {
                        colours[target] = colour;
                    }
                }
            }
        }
        return answered;
    }

    /** What is to be seen on all screens. */
    Picture picture() throws IOException {
        // Who understands sizes is told of them instead of being shown anything.
        try (Viewer viewer = look(RAW)) {
            // No colour has these bits, so that what was not sent can be told.
            int[] colours = new int[viewer.width() * viewer.height()];
            Arrays.fill(colours, -1);
            while (Arrays.stream(colours).anyMatch(each -> each == -1)) {
                ask(viewer, viewer.width(), viewer.height());
                isAnswered(viewer, colours);
            }
            return new Picture(viewer.width(), viewer.height(), colours);
        }
    }

    @Override
    public void close() {
        server.destroy();
        try {
            if (!server.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                server.destroyForcibly();
            }
        } catch (InterruptedException e) {
            server.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}

package fencerow;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * A disk that takes nothing more when it is told to: a small one of its own, which root can mount, or a limit on the
 * length of the files that this process writes.
 */
interface FullDisk extends AutoCloseable {
    /** Where files can be written, until it is full. */
    Path folder();

    /** Takes what room there is, but for so many bytes. */
    void fill(long left) throws IOException;

    /** Gives the room back. */
    void free() throws IOException;

    @Override
    void close() throws IOException;

    /** A disk in memory. @throws IOException if this user may not mount one */
    static FullDisk mounted(Path folder, long bytes) throws IOException {
        Files.createDirectories(folder);
        run("mount", "-t", "tmpfs", "-o", "size=" + bytes, "tmpfs", folder.toString());
        return new FullDisk() {
            private final Path filler = folder.resolve("filler");

            @Override
            public Path folder() {
                return folder;
            }

            @Override
            public void fill(long left) throws IOException {
                byte[] chunk = new byte[1 << 16];
                try (OutputStream out = Files.newOutputStream(filler)) {
                    while (Files.getFileStore(folder).getUsableSpace() > left) {
                        out.write(chunk);
                    }
                } catch (IOException e) {
                    if (left > 0) {
                        throw e;
                    }
                    // What was meant to come: not even this fits any more.
                }
            }

            @Override
            public void free() throws IOException {
                Files.deleteIfExists(filler);
            }

            @Override
            public void close() throws IOException {
                run("umount", "--lazy", folder.toString());
            }
        };
    }

    /** Lets a disk that was mounted be only read, or written again. */
    static void remount(FullDisk disk, boolean onlyRead) throws IOException {
        run("mount", "-o", "remount," + (onlyRead ? "ro" : "rw"), disk.folder().toString());
    }

    /** A limit of nothing on what this process appends, by Debian's prlimit. */
    static FullDisk limited(Path folder) {
        return new FullDisk() {
            @Override
            public Path folder() {
                return folder;
            }

            @Override
            public void fill(long left) throws IOException {
                limit("0");
            }

            @Override
            public void free() throws IOException {
                limit("unlimited");
            }

            @Override
            public void close() throws IOException {
                free();
            }
        };
    }

    private static void limit(String bytes) throws IOException {
        // The hard limit stays, so that nobody needs rights to lift the soft one.
        run("prlimit", "--pid", Long.toString(ProcessHandle.current().pid()), "--fsize=" + bytes + ":");
    }

    private static void run(String... command) throws IOException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.onExit().orTimeout(20, TimeUnit.SECONDS).join().exitValue();
        if (code != 0) {
            throw new IOException(String.join(" ", command) + ": " + said.strip());
        }
    }
}

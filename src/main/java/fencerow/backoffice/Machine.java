package fencerow.backoffice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The machine a kiosk runs on, as far as {@code doctor} looks at it.
 *
 * @param system      its name, as in the system property {@code os.name}
 * @param root        the folder all others are below; another one only in tests
 * @param environment variables
 * @param data        where the kiosk keeps what it must not lose
 */
public record Machine(String system, Path root, Map<String, String> environment, Path data) {
    static final long MEGABYTE = 1_000_000;
    static final long LEAST_DISK = 200 * MEGABYTE;

    /** Copies the map. */
    public Machine {
        environment = Map.copyOf(environment);
    }

    boolean isLinux() {
        return system.startsWith("Linux");
    }

    Optional<String> find(String variable) {
        return Optional.ofNullable(environment.get(variable)).filter(value -> !value.isBlank());
    }

    /** Whether the file is there; the path starts below the root. */
    boolean has(String path) {
        return Files.exists(root.resolve(path));
    }

    /** Whether the linker finds the shared library in one of the usual folders. */
    boolean hasLibrary(String name) {
        return Stream.concat(Stream.of("lib", "lib64", "usr/lib", "usr/lib64", "usr/local/lib"), architectures())
                .anyMatch(folder -> has(folder + "/" + name));
    }

    private Stream<String> architectures() {
        Path libraries = root.resolve("usr/lib");
        if (!Files.isDirectory(libraries)) {
            return Stream.empty();
        }
        try (Stream<Path> all = Files.list(libraries)) {
            List<String> found = all.map(each -> String.valueOf(each.getFileName()))
                    .filter(name -> name.endsWith("-linux-gnu"))
                    .map(name -> "usr/lib/" + name)
                    .toList();
            return found.stream();
        } catch (IOException e) {
            return Stream.empty();
        }
    }

    /** Whether the program is on the path. */
    boolean hasProgram(String name) {
        return find("PATH").stream()
                .flatMap(path -> Stream.of(path.split(":", -1)))
                .filter(folder -> folder.startsWith("/"))
                .anyMatch(folder -> Files.isExecutable(root.resolve(folder.substring(1)).resolve(name)));
    }

    /** How many bytes are free where the data are, or will be. */
    Optional<Long> findFreeSpace() {
        Path folder = data.toAbsolutePath();
        while (folder.getParent() != null && !Files.isDirectory(folder)) {
            folder = folder.getParent();
        }
        try {
            return Optional.of(Files.getFileStore(folder).getUsableSpace());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** What is wrong for who keeps data in the folder, in a sentence with what to do; empty while there is room. */
    public static Optional<String> findShortage(Path data) {
        return new Machine("", Path.of("/"), Map.of(), data).findFreeSpace()
                .filter(free -> free < LEAST_DISK)
                .map(free -> data + ": " + free / MEGABYTE + " MB are free; free at least " + LEAST_DISK / MEGABYTE
                        + " MB, or changes and lists can soon no longer be kept");
    }

    /** Whether files can be written where the data are, or will be; tries it. */
    boolean canKeepData() {
        try {
            Files.createDirectories(data);
            Path file = Files.createTempFile(data, "doctor", ".tmp");
            Files.writeString(file, "written");
            Files.delete(file);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}

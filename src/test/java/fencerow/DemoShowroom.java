package fencerow;

import fencerow.backoffice.Folders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The demo showroom's files in a folder where they can be spoilt: its configuration, whose lists are saved there too,
 * and a data folder; the content is the shipped one.
 *
 * @param folder holds {@code kiosk-config}, {@code lists} and {@code data}
 */
public record DemoShowroom(Path folder) {
    /** Copies it. */
    public static DemoShowroom in(Path folder) {
        var copy = new DemoShowroom(folder);
        try (Stream<Path> all = Files.walk(Path.of("kiosk-config"))) {
            for (Path file : all.toList()) {
                Files.copy(file, folder.resolve(file.toString()));
            }
        } catch (IOException e) {
            throw new AssertionError("the demo showroom cannot be copied", e);
        }
        copy.change("showroom.yaml", "save-folder: saved-lists", "save-folder: '" + folder.resolve("lists") + "'");
        return copy;
    }

    /** Where its files are. */
    public Folders folders() {
        return new Folders(
                Path.of("content"), folder.resolve("kiosk-config"), Optional.empty(), Optional.empty());
    }

    /** Where the kiosk keeps what it must not lose. */
    public Path data() {
        return folder.resolve("data");
    }

    /** Puts other words into a file of the configuration. */
    public void change(String file, String from, String to) {
        Path path = folder.resolve("kiosk-config").resolve(file);
        try {
            String text = Files.readString(path);
            if (!text.contains(from)) {
                throw new AssertionError(file + " has no longer [" + from + "]");
            }
            Files.writeString(path, text.replace(from, to));
        } catch (IOException e) {
            throw new AssertionError(file + " cannot be changed", e);
        }
    }
}

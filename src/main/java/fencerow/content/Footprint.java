package fencerow.content;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which files there are, how large each is and when it was last changed: enough to tell that something has changed,
 * without reading any of it. Equal ones mean that nothing has.
 *
 * @param files size and time of each file, by its path
 */
public record Footprint(Map<Path, String> files) {
    /** Copies the map. */
    public Footprint {
        files = Map.copyOf(files);
    }

    /** Looks at all files below these folders, or at these files, leaving out hidden ones and what cannot be seen. */
    public static Footprint of(Iterable<Path> roots) {
        Map<Path, String> files = new TreeMap<>();
        for (Path root : roots) {
            try {
                Files.walkFileTree(root, new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes seen) {
                        if (!String.valueOf(file.getFileName()).startsWith(".")) {
                            files.put(file, seen.size() + " " + seen.lastModifiedTime());
                        }
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFileFailed(Path file, IOException e) {
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult postVisitDirectory(Path folder, IOException e) {
                        return FileVisitResult.CONTINUE;
                    }
                });
            } catch (IOException e) {
                // Nothing of it can be seen; reading will say why.
                files.put(root, "not seen");
            }
        }
        return new Footprint(files);
    }
}

package fencerow.content;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A file with what one shopper said; it may hold answers, beliefs or both. */
final class ShopperFile {
    private ShopperFile() {}

    /** Reads the part of the file under the key. */
    static <T> Reading<T> read(Path path, String key, Function<List<YamlNode.Entry>, T> reader) {
        var problems = new Problems();
        Optional<SourceFile> file = SourceFile.read(path, path.toString(), problems);
        Optional<YamlNode> top = file.flatMap(text -> YamlFile.read(text, problems));
        Optional<YamlNode> part = top.flatMap(node -> node.map("answers", "beliefs").need(key));
        if (top.isEmpty() && !problems.hasErrors()) {
            problems.error(new Place(path.toString(), 1), "the file is empty", "write " + key + ": {...}");
        }
        Optional<T> read = part.map(YamlNode::entries).map(reader);
        if (read.isEmpty() || problems.hasErrors()) {
            return new Reading.Bad<>(problems.errors(), problems.warnings());
        }
        return new Reading.Good<>(read.get(), problems.warnings());
    }
}

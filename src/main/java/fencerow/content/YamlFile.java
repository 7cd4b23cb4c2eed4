package fencerow.content;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Turns YAML text into nodes that know their lines. One plain document: no tags, anchors, aliases or deep nesting. */
final class YamlFile {
    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setAllowDuplicateKeys(true) // reported by YamlNode with the line of the second
            .setCodePointLimit((int) SourceFile.MOST_BYTES)
            .build();

    private YamlFile() {}

    /** The top node; empty if the text is no such YAML, which is reported, or if nothing is written in it. */
    static Optional<YamlNode> read(SourceFile file, Problems problems) {
        try {
            var parser = new PlainParser(new ParserImpl(SETTINGS, new StreamReader(SETTINGS, file.text())));
            return new Composer(SETTINGS, parser).getSingleNode().map(node -> new YamlNode(node, file, problems));
        } catch (PlainParser.NotPlainException e) {
            problems.error(file.at(e.line()), String.valueOf(e.getMessage()), "write it out in plain YAML");
        } catch (MarkedYamlEngineException e) {
            problems.error(
                    file.at(line(e.getProblemMark().or(e::getContextMark))),
                    "this is no YAML: " + e.getProblem(),
                    "look at indents, quotes, colons and brackets here and just above");
        } catch (YamlEngineException e) {
            problems.error(file.at(1), "this is no YAML: " + firstLine(e), "write it anew as YAML text");
        }
        return Optional.empty();
    }

    /** The line of a mark, from 1. */
    static int line(Optional<Mark> mark) {
        return mark.map(Mark::getLine).orElse(0) + 1;
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("it cannot be read");
    }
}

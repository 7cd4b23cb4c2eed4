package fencerow.content;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Turns YAML text into nodes that know their lines. One plain document: no tags, anchors, aliases or deep nesting. */
final class YamlFile {
    private static final int DEEPEST = 20;

    private YamlFile() {}

    /** The top node; empty if the text is no such YAML, which is reported, or if nothing is written in it. */
    static Optional<YamlNode> read(SourceFile file, Problems problems) {
        LoadSettings settings = LoadSettings.builder()
                .setAllowDuplicateKeys(true) // reported by YamlNode with the line of the second
                .setCodePointLimit((int) SourceFile.MOST_BYTES)
                .build();
        try {
            if (!isPlain(file, settings, problems)) {
                return Optional.empty();
            }
            return new Compose(settings).composeString(file.text()).map(node -> new YamlNode(node, file, problems));
        } catch (MarkedYamlEngineException e) {
            problems.error(file.at(line(e.getProblemMark().or(e::getContextMark))),
                    "this is no YAML: " + e.getProblem(), "look at indents, quotes, colons and brackets here and just above");
            return Optional.empty();
        } catch (YamlEngineException e) {
            problems.error(file.at(1), "this is no YAML: " + firstLine(e), "write it anew as YAML text");
            return Optional.empty();
        }
    }

    /** Looks at the stream of events before nodes are built from it, because building goes down by recursion. */
    private static boolean isPlain(SourceFile file, LoadSettings settings, Problems problems) {
        int depth = 0;
        int documents = 0;
        for (Event event : new Parse(settings).parseString(file.text())) {
            Optional<String> wrong = Optional.empty();
            if (event instanceof CollectionStartEvent && ++depth > DEEPEST) {
                wrong = Optional.of("more than " + DEEPEST + " levels are nested");
            } else if (event instanceof CollectionEndEvent) {
                depth--;
            } else if (event instanceof DocumentStartEvent && ++documents > 1) {
                wrong = Optional.of("a second document starts");
            } else if (event instanceof AliasEvent) {
                wrong = Optional.of("an alias (*) is used");
            }
            if (wrong.isEmpty()) {
                wrong = marked(event);
            }
            if (wrong.isPresent()) {
                problems.error(file.at(line(event.getStartMark())), wrong.get(), "write it out in plain YAML");
                return false;
            }
        }
        return true;
    }

    private static Optional<String> marked(Event event) {
        if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
            return Optional.of("an anchor (&) is used");
        }
        boolean tagged = event instanceof ScalarEvent scalar && scalar.getTag().isPresent()
                || event instanceof CollectionStartEvent start && start.getTag().isPresent();
        return tagged ? Optional.of("a tag (!) is used") : Optional.empty();
    }

    private static int line(Optional<Mark> mark) {
        return mark.map(Mark::getLine).orElse(0) + 1;
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("it cannot be read");
    }
}

package fencerow.content;

import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.Parser;

/** Lets only plain YAML pass on its way to the composer, which goes down into nested nodes by recursion. */
final class PlainParser implements Parser {
    private static final int DEEPEST = 20;

    private final Parser parser;
    private int depth;
    private int documents;

    PlainParser(Parser parser) {
        this.parser = parser;
    }

    /** There is something that plain YAML has not. */
    static final class NotPlainException extends YamlEngineException {
        private static final long serialVersionUID = 1;

        private final int line;

        NotPlainException(String what, int line) {
            super(what);
            this.line = line;
        }

        /** Where, from 1. */
        int line() {
            return line;
        }
    }

    @Override
    public boolean checkEvent(Event.ID choice) {
        return parser.checkEvent(choice);
    }

    @Override
    public Event peekEvent() {
        return parser.peekEvent();
    }

    @Override
    public boolean hasNext() {
        return parser.hasNext();
    }

    @Override
    public Event next() {
        Event event = parser.next();
        if (event instanceof CollectionStartEvent) {
            depth++;
            refuse(depth > DEEPEST, "more than " + DEEPEST + " levels are nested", event);
        } else if (event instanceof CollectionEndEvent) {
            depth--;
        } else if (event instanceof DocumentStartEvent) {
            documents++;
            refuse(documents > 1, "a second document starts", event);
        }
        refuse(event instanceof AliasEvent, "an alias (*) is used", event);
        refuse(event instanceof NodeEvent node && node.getAnchor().isPresent(), "an anchor (&) is used", event);
        refuse(event instanceof ScalarEvent scalar && scalar.getTag().isPresent(), "a tag (!) is used", event);
        refuse(event instanceof CollectionStartEvent start && start.getTag().isPresent(), "a tag (!) is used", event);
        return event;
    }

    private static void refuse(boolean wrong, String what, Event event) {
        if (wrong) {
            throw new NotPlainException(what, YamlFile.line(event.getStartMark()));
        }
    }
}

package fencerow.content;

import fencerow.explainers.Look;
import fencerow.explainers.Look.Ink;
import fencerow.explainers.Look.Tone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The classes and the line width in force at one place of a drawing; groups hand theirs down.
 *
 * @param ink    what lines are drawn with
 * @param tone   what insides are filled with
 * @param width  of lines, where it is not the usual one of the ink
 * @param dashed whether lines are broken
 */
record LookReader(Optional<Ink> ink, Optional<Tone> tone, Optional<Double> width, boolean dashed) {
    /** Nothing said yet. */
    static final LookReader NOTHING = new LookReader(Optional.empty(), Optional.empty(), Optional.empty(), false);

    private static final String DASHED = "dashed";

    /** All classes there are. */
    static List<String> known() {
        List<String> known = new ArrayList<>();
        Arrays.stream(Ink.values()).map(Ink::id).forEach(known::add);
        Arrays.stream(Tone.values()).map(Tone::id).forEach(known::add);
        known.add(DASHED);
        return known;
    }

    /**
     * With the classes of an attribute.
     *
     * @throws IllegalArgumentException if a class is unknown, or two say different things of the same
     */
    LookReader with(String classes) {
        Optional<Ink> newInk = Optional.empty();
        Optional<Tone> newTone = Optional.empty();
        boolean newDashed = dashed;
        for (String word : classes.strip().split("\\s+")) {
            Optional<Ink> asInk = Arrays.stream(Ink.values()).filter(each -> each.id().equals(word)).findFirst();
            Optional<Tone> asTone = Arrays.stream(Tone.values()).filter(each -> each.id().equals(word)).findFirst();
            if (asInk.isPresent() && newInk.isPresent() || asTone.isPresent() && newTone.isPresent()) {
                throw new IllegalArgumentException("the classes [" + classes + "] say two things of the same; "
                        + "keep one for the line and one for the inside");
            }
            if (asInk.isEmpty() && asTone.isEmpty() && !word.equals(DASHED)) {
                throw new IllegalArgumentException("there is no class [" + word + "]; "
                        + Nearest.advice(word, known(), "use one of " + known()));
            }
            newInk = asInk.isPresent() ? asInk : newInk;
            newTone = asTone.isPresent() ? asTone : newTone;
            newDashed |= word.equals(DASHED);
        }
        return new LookReader(
                newInk.isPresent() ? newInk : ink, newTone.isPresent() ? newTone : tone, width, newDashed);
    }

    /** With the line width of an attribute. @throws IllegalArgumentException if it is no width */
    LookReader withWidth(String text) {
        NumberScanner scanner = new NumberScanner(text);
        double number = scanner.number();
        if (!scanner.atEnd() || !(number > 0)) {
            throw new IllegalArgumentException("the line width [" + text + "] is none; write a number above 0");
        }
        return new LookReader(ink, tone, Optional.of(number), dashed);
    }

    /**
     * The look of a shape here.
     *
     * @param size how many times larger it is drawn than written
     * @throws IllegalArgumentException if nothing of it would be seen
     */
    Look look(double size) {
        Ink line = ink.orElse(Ink.NONE);
        Tone inside = tone.orElse(Tone.NONE);
        if (line == Ink.NONE && inside == Tone.NONE) {
            throw new IllegalArgumentException("nothing of this would be seen; give it a class, such as line or "
                    + "fill-light");
        }
        return new Look(line, inside, width.orElse(line.usualWidth()) * size, dashed);
    }
}

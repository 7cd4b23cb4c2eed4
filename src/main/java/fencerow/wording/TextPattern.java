package fencerow.wording;

import com.ibm.icu.text.MessagePattern;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Looks into the patterns that words are written as: ICU MessageFormat with named arguments. */
public final class TextPattern {
    private TextPattern() {}

    /** What is wrong with the pattern's braces; empty if nothing is. */
    public static Optional<String> flaw(String pattern) {
        try {
            var parsed = new MessagePattern(pattern);
            return parsed.hasNumberedArguments()
                    ? Optional.of("an argument has a number in place of a name")
                    : Optional.empty();
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.of(String.valueOf(e.getMessage()).lines().findFirst().orElse("it cannot be read"));
        }
    }

    /** The names of the pattern's arguments. @throws IllegalArgumentException if the pattern has a flaw */
    public static Set<String> arguments(String pattern) {
        var parsed = new MessagePattern(pattern);
        Set<String> names = new TreeSet<>();
        for (int i = 0; i < parsed.countParts(); i++) {
            MessagePattern.Part part = parsed.getPart(i);
            if (part.getType() == MessagePattern.Part.Type.ARG_NAME) {
                names.add(parsed.getSubstring(part));
            }
        }
        return names;
    }
}

package fencerow.search;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.TypeAttribute;
import org.apache.lucene.util.AttributeSource;

/**
 * Makes one word of a number and its unit, however they are written: {@code 60 in}, {@code 60-inch}, {@code 60in} and
 * {@code 5 ft} all give {@code 60in}. The bare number goes before it. Drops apostrophes on the way.
 */
final class MeasureFilter extends TokenFilter {
    /** The type of the words it makes. */
    static final String MEASURE = "<MEASURE>";

    private static final int INCHES_A_FOOT = 12;
    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}(?:,\\d{3})+|\\d+(?:\\.\\d+)?");
    private static final Pattern GLUED = Pattern.compile("(\\d+(?:\\.\\d+)?)([a-z]+)");
    /** Unit words, English and Spanish without accents, and what they are written as in the index. */
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("in", "in"), Map.entry("inch", "in"), Map.entry("inches", "in"),
            Map.entry("pulgada", "in"), Map.entry("pulgadas", "in"),
            Map.entry("ft", "ft"), Map.entry("foot", "ft"), Map.entry("feet", "ft"),
            Map.entry("pie", "ft"), Map.entry("pies", "ft"),
            Map.entry("hp", "hp"), Map.entry("horsepower", "hp"), Map.entry("horse", "hp"),
            Map.entry("caballos", "hp"),
            Map.entry("lb", "lb"), Map.entry("lbs", "lb"), Map.entry("pound", "lb"), Map.entry("pounds", "lb"),
            Map.entry("libras", "lb"),
            Map.entry("ac", "ac"), Map.entry("acre", "ac"), Map.entry("acres", "ac"),
            Map.entry("hr", "hr"), Map.entry("hrs", "hr"), Map.entry("hour", "hr"), Map.entry("hours", "hr"),
            Map.entry("horas", "hr"),
            Map.entry("rpm", "rpm"), Map.entry("gpm", "gpm"), Map.entry("psi", "psi"));

    private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
    private final TypeAttribute type = addAttribute(TypeAttribute.class);
    private Optional<AttributeSource.State> ahead = Optional.empty();

    MeasureFilter(TokenStream input) {
        super(input);
    }

    @Override
    public boolean incrementToken() throws IOException {
        if (ahead.isPresent()) {
            restoreState(ahead.get());
            ahead = Optional.empty();
            if (type.type().equals(MEASURE)) {
                return true;
            }
        } else if (!input.incrementToken()) {
            return false;
        } else {
            dropApostrophes();
        }
        if (term.length() == 0 || !Character.isDigit(term.charAt(0))) {
            return true;
        }
        String word = term.toString();
        if (NUMBER.matcher(word).matches()) {
            afterNumber(word.replace(",", ""));
            return true;
        }
        Matcher glued = GLUED.matcher(word);
        if (glued.matches() && UNITS.containsKey(glued.group(2))) {
            String number = glued.group(1);
            AttributeSource.State whole = captureState();
            makeMeasure(number, glued.group(2));
            ahead = Optional.of(captureState());
            restoreState(whole);
            term.setEmpty().append(number);
        }
        return true;
    }

    /** Looks at the word behind a number, which becomes a measure if it is a unit. */
    private void afterNumber(String number) throws IOException {
        term.setEmpty().append(number);
        AttributeSource.State here = captureState();
        if (input.incrementToken()) {
            dropApostrophes();
            String next = term.toString();
            if (UNITS.containsKey(next)) {
                makeMeasure(number, next);
            }
            ahead = Optional.of(captureState());
        }
        restoreState(here);
    }

    private void makeMeasure(String number, String unitWord) {
        String unit = UNITS.getOrDefault(unitWord, unitWord);
        var amount = new BigDecimal(number);
        if (unit.equals("ft")) {
            amount = amount.multiply(BigDecimal.valueOf(INCHES_A_FOOT));
            unit = "in";
        }
        String plain = amount.signum() == 0 ? "0" : amount.stripTrailingZeros().toPlainString();
        term.setEmpty().append(plain).append(unit);
        type.setType(MEASURE);
    }

    private void dropApostrophes() {
        char[] letters = term.buffer();
        int kept = 0;
        for (int i = 0; i < term.length(); i++) {
            if (letters[i] != '\'') {
                letters[kept++] = letters[i];
            }
        }
        term.setLength(kept);
    }

    @Override
    public void reset() throws IOException {
        super.reset();
        ahead = Optional.empty();
    }
}

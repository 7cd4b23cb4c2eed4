package fencerow.search;

import fencerow.terms.FeatureId;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds price limits and equipment in a query, in English and Spanish. */
final class IntentReader {
    private static final String AMOUNT = "\\$?\\s?(\\d{1,3}(?:,\\d{3})+|\\d+(?:\\.\\d+)?)\\s?(k|grand|thousand|mil)?\\b"
            + "(?:\\s?(?:dollars|bucks|usd|d[o\u00f3]lares))?";
    private static final Pattern BETWEEN =
            Pattern.compile("\\b(?:between|entre)\\s+" + AMOUNT + "\\s*(?:and|to|y|-)\\s*" + AMOUNT);
    private static final Pattern AT_MOST = Pattern.compile("(?:\\b(?:under|below|less than|no more than|at most|up to"
            + "|max|maximum|cheaper than|hasta|menos de|por debajo de)|<)\\s*" + AMOUNT);
    private static final Pattern AT_LEAST = Pattern.compile(
            "(?:\\b(?:over|above|more than|at least|starting at|m[a\u00e1]s de|desde)|>)\\s*" + AMOUNT);
    /** An amount that only its dollar sign tells from other numbers. */
    private static final Pattern PLAIN = Pattern.compile("(?=\\$)" + AMOUNT);
    private static final Pattern OF_UNITS = Pattern.compile("\\b(?:in stock|on the lot|for sale"
            + "|tractors? (?:with|that has)|en existencia|en venta|tractor(?:es)? con)\\b");
    private static final Pattern NOT_MONEY = Pattern.compile("\\s*-?\\s*(?:hp|horsepower|hours?|hrs?|in|inch|inches|ft"
            + "|feet|foot|lbs?|pounds?|acres?|rpm|gpm|psi|horas|pulgadas|pies|libras|caballos)\\b");
    private static final double LEAST_PRICE = 1000;
    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2100;

    private final Reader reader;
    private final Map<String, Set<FeatureId>> byName = new HashMap<>();
    private final Map<String, Set<FeatureId>> byLastWords = new HashMap<>();

    /** Learns equipment's names from the explainers of what units may have. */
    IntentReader(Collection<Entry> entries, Reader reader) {
        this.reader = reader;
        Set<String> equipment = entries.stream()
                .filter(entry -> entry.kind() == Kind.UNIT)
                .flatMap(entry -> entry.tags().stream())
                .filter(tag -> tag.of() == Tag.Of.FITTED || tag.of() == Tag.Of.UNVERIFIED)
                .map(Tag::value)
                .collect(Collectors.toSet());
        for (Entry entry : entries) {
            if (entry.kind() == Kind.EXPLAINER && equipment.contains(entry.id())) {
                var feature = new FeatureId(entry.id());
                learn(byName, entry.title(), feature);
                entry.names().forEach(name -> learn(byName, name, feature));
                learnLastWords(entry.title(), entry.language(), feature);
            }
        }
    }

    private void learn(Map<String, Set<FeatureId>> names, String name, FeatureId feature) {
        reader.wholes(name).forEach(key -> names.computeIfAbsent(key, k -> new TreeSet<>()).add(feature));
    }

    /** "Cab" stands for every kind of cab: the last words of what comes before the first small word. */
    private void learnLastWords(String title, String language, FeatureId feature) {
        List<String> head = reader.read(title).words().stream()
                .map(Reading.Word::folded)
                .takeWhile(word -> !Analysis.isStop(language, word))
                .toList();
        for (int from = 1; from < head.size(); from++) {
            learn(byLastWords, String.join(" ", head.subList(from, head.size())), feature);
        }
    }

    /**
     * A query understood.
     *
     * @param intent what it asks of units
     * @param words  the query without what names a price
     * @param rest   that without what names equipment
     */
    record Understood(Intent intent, String words, String rest) {}

    /** Reads a query. */
    Understood read(String text) {
        Prices prices = prices(text);
        boolean priced = prices.atLeast().isPresent() || prices.atMost().isPresent();
        if (!priced && !OF_UNITS.matcher(lower(text)).find()) {
            return new Understood(Intent.NONE, text, text);
        }
        String words = prices.words();
        List<Set<FeatureId>> equipment = new ArrayList<>();
        String rest = takeEquipment(words, equipment);
        var intent = new Intent(equipment, prices.atLeast(), prices.atMost());
        return new Understood(intent, words, rest);
    }

    private record Prices(Optional<Money> atLeast, Optional<Money> atMost, String words) {}

    private static Prices prices(String text) {
        String lower = lower(text);
        Matcher between = BETWEEN.matcher(lower);
        if (between.find() && isMoney(between, 3, lower)) {
            return new Prices(Optional.of(money(between, 1)), Optional.of(money(between, 3)), without(text, between));
        }
        Matcher most = AT_MOST.matcher(lower);
        if (most.find() && isMoney(most, 1, lower)) {
            return new Prices(Optional.empty(), Optional.of(money(most, 1)), without(text, most));
        }
        Matcher least = AT_LEAST.matcher(lower);
        if (least.find() && isMoney(least, 1, lower)) {
            return new Prices(Optional.of(money(least, 1)), Optional.empty(), without(text, least));
        }
        Matcher plain = PLAIN.matcher(lower);
        if (plain.find() && isMoney(plain, 1, lower)) {
            return new Prices(Optional.empty(), Optional.of(money(plain, 1)), without(text, plain));
        }
        return new Prices(Optional.empty(), Optional.empty(), text);
    }

    /** Keeps every character's place, so that what is found can be cut out of the original. */
    private static String lower(String text) {
        var lower = new StringBuilder(text.length());
        text.chars().forEach(c -> lower.append((char) Character.toLowerCase(c)));
        return lower.toString();
    }

    private static boolean isMoney(Matcher found, int group, String text) {
        String number = found.group(group);
        double dollars = money(found, group).toDollars();
        boolean marked = found.group(group + 1) != null || found.group().indexOf('$') >= 0 || number.contains(",");
        boolean year = dollars >= FIRST_YEAR && dollars <= LAST_YEAR;
        return dollars >= LEAST_PRICE && (marked || !year)
                && !NOT_MONEY.matcher(text).region(found.end(), text.length()).lookingAt();
    }

    private static Money money(Matcher found, int group) {
        double number = Double.parseDouble(found.group(group).replace(",", ""));
        return Money.ofDollars(found.group(group + 1) == null ? number : number * 1000);
    }

    private static String without(String text, Matcher found) {
        return (text.substring(0, found.start()) + " " + text.substring(found.end())).strip();
    }

    /** Takes the longest names first, from left to right. */
    private String takeEquipment(String text, List<Set<FeatureId>> into) {
        List<Reading.Word> words = reader.read(text).words();
        var rest = new StringBuilder();
        int from = 0;
        while (from < words.size()) {
            int to = words.size();
            Optional<Set<FeatureId>> found = Optional.empty();
            while (to > from && found.isEmpty()) {
                found = equipment(words.subList(from, to));
                to = found.isPresent() ? to : to - 1;
            }
            if (found.isPresent()) {
                into.add(found.get());
                from = to;
            } else {
                rest.append(words.get(from).folded()).append(' ');
                from++;
            }
        }
        return rest.toString();
    }

    private Optional<Set<FeatureId>> equipment(List<Reading.Word> words) {
        String name = words.stream().map(Reading.Word::folded).collect(Collectors.joining(" "));
        List<String> keys = reader.wholes(name);
        return keys.stream().filter(byName::containsKey).findFirst().map(byName::get)
                .or(() -> keys.stream().filter(byLastWords::containsKey).findFirst().map(byLastWords::get));
    }
}

package fencerow.desk;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Counts.
 *
 * @param counts by counter; all above 0
 */
public record Tally(SortedMap<Counter, Long> counts) {
    /** Nothing counted. */
    public static final Tally NONE = new Tally(new TreeMap<>());

    /** Copies the counts. @throws IllegalArgumentException if one is not above 0 */
    public Tally {
        counts.forEach((counter, count) -> {
            if (count < 1) {
                throw new IllegalArgumentException("count " + count + " of " + counter + " is not above 0");
            }
        });
        counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
    }

    /** Counts in any order. */
    public static Tally of(Map<Counter, Long> counts) {
        return new Tally(new TreeMap<>(counts));
    }

    /** How often; 0 where never. */
    public long count(Counter counter) {
        return counts.getOrDefault(counter, 0L);
    }

    /** How often; 0 where never. */
    public long count(Counter.Kind kind, String subject) {
        return count(Counter.of(kind, subject));
    }

    /** With so many more; 0 changes nothing. */
    public Tally plus(Counter counter, long more) {
        return more == 0 ? this : plus(Tally.of(Map.of(counter, more)));
    }

    /** Both together. */
    public Tally plus(Tally other) {
        TreeMap<Counter, Long> sum = new TreeMap<>(counts);
        other.counts.forEach((counter, count) -> sum.merge(counter, count, Long::sum));
        return new Tally(sum);
    }

    /** Counters of one kind. */
    public SortedMap<Counter, Long> of(Counter.Kind kind) {
        TreeMap<Counter, Long> found = new TreeMap<>();
        counts.forEach((counter, count) -> {
            if (counter.kind() == kind) {
                found.put(counter, count);
            }
        });
        return found;
    }
}

package fencerow.printing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How many copies have been printed, held against what the showroom allows. Immutable; knows times, not shoppers.
 *
 * @param mostPerVisit the most in one visit
 * @param mostPerHour  the most in any hour
 * @param thisVisit    printed in this visit so far
 * @param lately       when each of the last hour was printed, oldest first
 */
public record Copies(int mostPerVisit, int mostPerHour, int thisVisit, List<Instant> lately) {
    private static final Duration HOUR = Duration.ofHours(1);

    /** @throws IllegalArgumentException if either limit allows no copy at all */
    public Copies {
        lately = List.copyOf(lately);
        if (mostPerVisit < 1 || mostPerHour < 1) {
            throw new IllegalArgumentException("limits of " + mostPerVisit + " copies a visit and " + mostPerHour
                    + " an hour allow none; allow at least 1");
        }
    }

    /** None printed yet. */
    public static Copies none(int mostPerVisit, int mostPerHour) {
        return new Copies(mostPerVisit, mostPerHour, 0, List.of());
    }

    /** What has been printed, held against other limits. */
    public Copies under(int perVisit, int perHour) {
        return new Copies(perVisit, perHour, thisVisit, lately);
    }

    /** Why no further copy may be printed now, if that is so. */
    public Optional<PrintOutcome.TooMany> findRefusal(Instant now) {
        if (thisVisit >= mostPerVisit) {
            return Optional.of(new PrintOutcome.TooMany(Optional.empty()));
        }
        List<Instant> counting = within(now);
        if (counting.size() < mostPerHour) {
            return Optional.empty();
        }
        Instant free = counting.get(counting.size() - mostPerHour).plus(HOUR);
        return Optional.of(new PrintOutcome.TooMany(Optional.of(Duration.between(now, free))));
    }

    /** With one copy more. */
    public Copies with(Instant now) {
        List<Instant> more = Stream.concat(within(now).stream(), Stream.of(now)).toList();
        return new Copies(mostPerVisit, mostPerHour, thisVisit + 1, more);
    }

    /** For the next shopper. */
    public Copies newVisit() {
        return new Copies(mostPerVisit, mostPerHour, 0, lately);
    }

    private List<Instant> within(Instant now) {
        return lately.stream().filter(time -> time.plus(HOUR).isAfter(now)).toList();
    }
}

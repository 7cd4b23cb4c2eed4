package fencerow.kiosk.matching;

import java.util.List;
import java.util.Optional;

/**
 * What the shopper asked for.
 *
 * @param musts   every must-have, set aside or not
 * @param elsewhere jobs that answers say are done another way
 * @param wishes  in words
 * @param budget  in words, where there is one
 * @param changes what doing without one must-have would bring
 * @param money   what a higher budget would bring, where it would
 */
public record Asked(
        List<Must> musts,
        List<Elsewhere> elsewhere,
        List<String> wishes,
        Optional<String> budget,
        List<Change> changes,
        Optional<String> money) {
    /** Copies the lists. */
    public Asked {
        musts = List.copyOf(musts);
        elsewhere = List.copyOf(elsewhere);
        wishes = List.copyOf(wishes);
        changes = List.copyOf(changes);
    }

    /**
     * A must-have.
     *
     * @param instead what having the job done another way costs, where it is a job
     * @param counts  whether it is asked for; not when it is set aside
     */
    public record Must(String id, String words, Optional<String> instead, boolean counts) {}

    /** A job that is done another way, and what that costs a year. */
    public record Elsewhere(String job, String way) {}

    /** A must-have, and what doing without it would bring. */
    public record Change(String must, String words) {}
}

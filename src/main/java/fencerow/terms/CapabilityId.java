package fencerow.terms;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Identifies something that work needs from a machine. Spelt {@code name}, {@code name.kind} or {@code space:name}:
 * a feature ({@code rear-remotes}), one kind of it ({@code quick-attach.plate}), a figure ({@code pto-power}),
 * a declared capability ({@code enclosed}), a job that can be done ({@code does:clear-snow}) or an attachment that is
 * there ({@code has:front-blower}).
 *
 * @param value the spelling
 */
public record CapabilityId(String value) implements Comparable<CapabilityId> {
    private static final Pattern SPELLING =
            Pattern.compile("((does|has):)?[a-z0-9]+(-[a-z0-9]+)*(\\.[a-z0-9]+(-[a-z0-9]+)*)?");

    /** @throws IllegalArgumentException if the spelling is none of the three */
    public CapabilityId {
        if (!SPELLING.matcher(value).matches()) {
            throw new IllegalArgumentException("capability [" + value + "] is not spelt as one; "
                    + "use name, name.kind, does:job or has:attachment");
        }
    }

    /** That the feature is there (its count where it has one). */
    public static CapabilityId of(FeatureId feature) {
        return new CapabilityId(feature.value());
    }

    /** That the feature is there in one kind. */
    public static CapabilityId of(FeatureId feature, String kind) {
        return new CapabilityId(feature.value() + "." + kind);
    }

    /** The data-sheet number. */
    public static CapabilityId of(Figure figure) {
        return new CapabilityId(figure.id());
    }

    /** That the job can be done. */
    public static CapabilityId does(JobId job) {
        return new CapabilityId("does:" + job.value());
    }

    /** That the attachment is there. */
    public static CapabilityId has(ItemId attachment) {
        return new CapabilityId("has:" + attachment.value());
    }

    /** The name of the feature it would be about, kind left off; empty for jobs and attachments. */
    public Optional<String> featureName() {
        if (value.indexOf(':') >= 0) {
            return Optional.empty();
        }
        int dot = value.indexOf('.');
        return Optional.of(dot < 0 ? value : value.substring(0, dot));
    }

    /** The kind of the feature, where one is named. */
    public Optional<String> kindName() {
        int dot = value.indexOf('.');
        return dot < 0 ? Optional.empty() : Optional.of(value.substring(dot + 1));
    }

    @Override
    public int compareTo(CapabilityId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}

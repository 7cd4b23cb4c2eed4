package fencerow.search;

import fencerow.terms.FeatureId;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;

/**
 * Something an entry is about, by which hits are filtered and favoured.
 *
 * @param of    what kind of thing it names
 * @param value its id
 */
public record Tag(Of of, String value) {
    /** What a tag names. */
    public enum Of {
        /** An explainer's topic. */
        TOPIC,
        /** A job of the shopper. */
        JOB,
        /** A stop of the walk around the tractor. */
        STOP,
        /** A kind of work, such as {@code snow}. */
        WORK,
        /** A machine class; an entry without one is about all classes. */
        MACHINE_CLASS,
        /** Equipment that a unit has. */
        FITTED,
        /** Equipment that a unit may have: nobody has looked. */
        UNVERIFIED
    }

    /** About a topic. */
    public static Tag topic(TopicId topic) {
        return new Tag(Of.TOPIC, topic.value());
    }

    /** About a job. */
    public static Tag job(JobId job) {
        return new Tag(Of.JOB, job.value());
    }

    /** Found at a stop of the walk around the tractor. */
    public static Tag stop(Stop stop) {
        return new Tag(Of.STOP, stop.id());
    }

    /** About a kind of work. */
    public static Tag work(String group) {
        return new Tag(Of.WORK, group);
    }

    /** For a machine class. */
    public static Tag machineClass(MachineClass machineClass) {
        return new Tag(Of.MACHINE_CLASS, machineClass.id());
    }

    /** A unit that has the feature. */
    public static Tag fitted(FeatureId feature) {
        return new Tag(Of.FITTED, feature.value());
    }

    /** A unit on which nobody has looked for the feature. */
    public static Tag unverified(FeatureId feature) {
        return new Tag(Of.UNVERIFIED, feature.value());
    }
}

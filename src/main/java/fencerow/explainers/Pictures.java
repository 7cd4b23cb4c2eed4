package fencerow.explainers;

import fencerow.terms.JobId;
import fencerow.terms.TopicId;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All drawings of the content, by name. The picture of a topic has the topic's name; beside it stands, where it helps,
 * how things are without. The picture of a job has the job's name after {@link #JOB}.
 *
 * @param byName every picture under its own name
 */
public record Pictures(Map<String, Picture> byName) {
    /** No pictures at all. */
    public static final Pictures NONE = new Pictures(Map.of());

    /** Ends the name of the picture that shows a topic's thing missing. */
    public static final String WITHOUT = "-without";

    /** Starts the name of the picture that shows a job being done. */
    public static final String JOB = "job-";

    /** Copies the map. @throws IllegalArgumentException if a picture stands under another name than its own */
    public Pictures {
        byName = Map.copyOf(new TreeMap<>(byName));
        byName.forEach((name, picture) -> {
            if (!name.equals(picture.name())) {
                throw new IllegalArgumentException("[" + picture.name() + "] stands under [" + name
                        + "]; put it under its own name");
            }
        });
    }

    /** The job being done. */
    public Optional<Picture> of(JobId job) {
        return find(JOB + job.value());
    }

    /** The picture with the name. */
    public Optional<Picture> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** What the topic's thing looks like and where it sits. */
    public Optional<Picture> of(TopicId topic) {
        return find(topic.value());
    }

    /** How things are without it. */
    public Optional<Picture> without(TopicId topic) {
        return find(topic.value() + WITHOUT);
    }

    /** A whole tractor, seen from there; its parts lead to their topics. */
    public Optional<Picture> tractor(Side side) {
        return find(side.pictureName());
    }

    /** Where one stands to look at a tractor. */
    public enum Side {
        /** Beside it, on its right-hand side: its front to the right. */
        SIDE("tractor-side"),
        /** Ahead of it. */
        FRONT("tractor-front"),
        /** Behind it. */
        REAR("tractor-rear");

        private final String pictureName;

        Side(String pictureName) {
            this.pictureName = pictureName;
        }

        /** The name of the picture seen from there. */
        public String pictureName() {
            return pictureName;
        }
    }
}

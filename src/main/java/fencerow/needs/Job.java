package fencerow.needs;

import fencerow.terms.JobId;
import fencerow.terms.PriceRange;
import java.util.List;
import java.util.Map;

/**
 * A job to be done on the shopper's land.
 *
 * @param id       its id
 * @param group    the kind of work it belongs to, such as {@code lawn}
 * @param cautions ids of the cautions that go with it
 * @param yearly   what it costs a year to have it done another way
 */
public record Job(JobId id, String group, List<String> cautions, Map<OtherWay, PriceRange> yearly) {
    /** Copies the collections. */
    public Job {
        cautions = List.copyOf(cautions);
        yearly = Map.copyOf(yearly);
    }

    /** Ways to get a job done without the tractor. */
    public enum OtherWay {
        /** Hire the machine and do it oneself. */
        HIRE("hire"),
        /** Pay somebody. */
        CONTRACT("contract"),
        /** Own a machine made for that one job. */
        OTHER_MACHINE("other-machine");

        private final String id;

        OtherWay(String id) {
            this.id = id;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }
    }
}

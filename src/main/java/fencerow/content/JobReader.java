package fencerow.content;

import fencerow.needs.Job;
import fencerow.terms.JobId;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads {@code jobs.yaml}, with the yearly prices of other ways from {@code hire.csv}. */
final class JobReader {
    private final IdLists lists;
    private final Map<String, Map<Job.OtherWay, PriceRange>> yearly;
    private final boolean allYearly;

    /** Takes the yearly prices, and whether all of them could be read; if not, none can be called missing. */
    JobReader(IdLists lists, Map<String, Map<Job.OtherWay, PriceRange>> yearly, boolean allYearly) {
        this.lists = lists;
        this.yearly = yearly;
        this.allYearly = allYearly;
    }

    List<Job> read(YamlNode top) {
        List<Job> all = new ArrayList<>();
        for (YamlNode.Entry entry : top.entries()) {
            int before = top.problems().count();
            YamlMap map = entry.value().map("work", "other-ways", "cautions");
            String group = map.findText("work").orElse("");
            List<String> cautions = lists.ids(map.list("cautions"), Kind.CAUTION);
            Set<Job.OtherWay> ways = EnumSet.noneOf(Job.OtherWay.class);
            map.list("other-ways").forEach(node -> ways.add(node.choice(Job.OtherWay.values(), Job.OtherWay::id)));
            Map<Job.OtherWay, PriceRange> prices = yearly.getOrDefault(entry.key(), Map.of());
            for (Job.OtherWay way : ways) {
                if (allYearly && !prices.containsKey(way)) {
                    top.problems().error(entry.place(),
                            "the job [" + entry.key() + "] has no price a year for [" + way.id() + "]",
                            "add a row to hire.csv, or delete the way here");
                }
            }
            for (Job.OtherWay way : prices.keySet()) {
                if (!ways.contains(way)) {
                    top.problems().warning(entry.place(), "hire.csv prices [" + way.id() + "] for the job ["
                            + entry.key() + "], which does not name it", "name it under other-ways");
                }
            }
            top.problems()
                    .make(entry.place(), before, () -> new Job(new JobId(entry.key()), group, cautions, prices))
                    .ifPresent(all::add);
        }
        return all;
    }
}

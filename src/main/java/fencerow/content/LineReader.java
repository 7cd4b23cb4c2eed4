package fencerow.content;

import fencerow.checklist.LineNumber;
import fencerow.checklist.LineTemplate;
import fencerow.checklist.LineTemplate.Audience;
import fencerow.terms.AtStake;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.PriceRange;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads {@code checklist.yaml}. A line with a feature takes from it what it does not say itself. {@code for: topic}
 * lines are on the list when work or quiz touched their topic.
 */
final class LineReader {
    private static final int MOST_DOLLARS = 1_000_000;

    private final Ids ids;
    private final IdLists lists;
    private final Map<String, Feature> features;

    LineReader(Ids ids, IdLists lists, Map<String, Feature> features) {
        this.ids = ids;
        this.lists = lists;
        this.features = features;
    }

    private enum For {
        EVERYONE(Audience.EVERYONE), USED(Audience.USED), NEW(Audience.NEW), TOPIC(Audience.FEATURE);

        private final Audience audience;

        For(Audience audience) {
            this.audience = audience;
        }

        String word() {
            return this == TOPIC ? "topic" : audience.id();
        }
    }

    List<LineTemplate> read(YamlNode top) {
        List<LineTemplate> all = new ArrayList<>();
        for (YamlNode node : top.list()) {
            int before = node.problems().count();
            YamlMap map = node.map(
                    "id", "feature", "stop", "for", "at-stake", "job-at-stake", "walk-away", "topic", "number");
            String id = map.text("id");
            ids.declare(Kind.LINE, id, map.placeOf("id"));
            Optional<FeatureId> feature = map.find("feature")
                    .filter(named -> ids.require(named.text(), named.place(), Kind.FEATURE))
                    .map(named -> new FeatureId(named.text()));
            Stop stop = stop(map, feature);
            Audience audience = audience(map);
            AtStake atStake = atStake(map);
            boolean walkAway = map.flag("walk-away");
            Optional<TopicId> topic = lists.topic(map, "topic").or(() -> feature.map(f -> new TopicId(f.value())));
            Optional<LineNumber.Kind> number = map.has("number")
                    ? Optional.of(map.choice("number", LineNumber.Kind.values(), LineNumber.Kind::id))
                    : Optional.empty();
            if (audience == Audience.FEATURE && !map.has("topic") && !map.has("feature")) {
                node.problems().error(map.placeOf("for"), "a line for a topic names none", "add topic:");
            }
            if (!map.has("feature") && map.lacks("at-stake") && map.lacks("job-at-stake")) {
                node.error("the line [" + id + "] says nothing of what is at stake",
                        "add at-stake: {low: ..., high: ...} or job-at-stake: true");
            }
            if (map.has("feature") && feature.isEmpty()) {
                continue;
            }
            node.problems()
                    .make(map.place(), before, () ->
                            new LineTemplate(id, stop, feature, audience, atStake, walkAway, topic, number))
                    .ifPresent(all::add);
        }
        return all;
    }

    private Stop stop(YamlMap map, Optional<FeatureId> feature) {
        if (map.has("stop") || feature.isEmpty() && !map.has("feature")) {
            return map.choice("stop", Stop.values(), Stop::id);
        }
        return feature.flatMap(id -> Optional.ofNullable(features.get(id.value())))
                .map(Feature::stop)
                .orElse(Stop.PAPERS);
    }

    private static Audience audience(YamlMap map) {
        if (map.has("for") || !map.has("feature")) {
            return map.choice("for", For.values(), For::word).audience;
        }
        return Audience.FEATURE;
    }

    private static AtStake atStake(YamlMap map) {
        boolean job = map.flag("job-at-stake");
        if (!map.has("at-stake")) {
            return new AtStake(PriceRange.ZERO, job);
        }
        YamlMap money = map.map("at-stake", "low", "high");
        int low = money.whole("low", 0, MOST_DOLLARS);
        int high = money.whole("high", 0, MOST_DOLLARS);
        return map.problems()
                .make(money.place(), map.problems().count(), () -> new AtStake(PriceRange.ofDollars(low, high), job))
                .orElse(AtStake.NOTHING);
    }
}

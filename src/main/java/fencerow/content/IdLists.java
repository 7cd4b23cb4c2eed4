package fencerow.content;

import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads lists of ids, each of which must be there. */
final class IdLists {
    private final Ids ids;

    IdLists(Ids ids) {
        this.ids = ids;
    }

    /** The ids in a list that exist as one of the kinds; others and repeated ones are reported. */
    List<String> ids(List<YamlNode> nodes, Kind... kinds) {
        List<String> found = new ArrayList<>();
        for (YamlNode node : nodes) {
            String id = node.text();
            if (found.contains(id)) {
                node.error("[" + id + "] stands here twice", "delete one of them");
            } else if (ids.require(id, node.place(), kinds)) {
                found.add(id);
            }
        }
        return found;
    }

    Set<ItemId> items(List<YamlNode> nodes) {
        Set<ItemId> items = new LinkedHashSet<>();
        ids(nodes, Kind.ADD_ON, Kind.ATTACHMENT).forEach(id -> items.add(new ItemId(id)));
        return items;
    }

    List<ItemId> attachments(List<YamlNode> nodes) {
        return ids(nodes, Kind.ATTACHMENT).stream().map(ItemId::new).toList();
    }

    List<JobId> jobs(List<YamlNode> nodes) {
        return ids(nodes, Kind.JOB).stream().map(JobId::new).toList();
    }

    /** The topic under the key, if one is named and exists. */
    Optional<TopicId> topic(YamlMap map, String key) {
        return map.find(key)
                .filter(node -> ids.require(node.text(), node.place(), Kind.TOPIC))
                .map(node -> new TopicId(node.text()));
    }

    /** The classes under the key; all where the key is not there. */
    static Set<MachineClass> classes(YamlMap map) {
        if (!map.has("classes")) {
            return EnumSet.allOf(MachineClass.class);
        }
        Set<MachineClass> classes = EnumSet.noneOf(MachineClass.class);
        for (YamlNode node : map.list("classes")) {
            if (!classes.add(node.choice(MachineClass.values(), MachineClass::id))) {
                node.error("[" + node.text() + "] stands here twice", "delete one of them");
            }
        }
        if (classes.isEmpty()) {
            map.problems().error(map.placeOf("classes"), "no class is named", "name one, or delete the key for all");
        }
        return classes;
    }
}

package fencerow.content;

import fencerow.checklist.LineTemplate;
import fencerow.quiz.QuizQuestion;
import fencerow.stock.Item;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.MachineClass;
import fencerow.terms.Offering;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Warns of features that are not complete: no way to get one, no question on it, no line to check it by. */
final class FeatureCheck {
    private final Ids ids;
    private final Problems problems;

    FeatureCheck(Ids ids, Problems problems) {
        this.ids = ids;
        this.problems = problems;
    }

    void check(
            Collection<Feature> features,
            Collection<Item> items,
            Collection<QuizQuestion> questions,
            Collection<LineTemplate> lines) {
        for (Feature feature : features) {
            Place place = ids.placeOf(Kind.FEATURE, feature.id().value());
            checkWays(feature, items, place);
            if (!ids.isIncomplete(Kind.QUIZ)
                    && questions.stream().noneMatch(each -> isAbout(each.feature(), feature))) {
                problems.warning(place, "no quiz question is about the feature [" + feature.id() + "]",
                        "add one to a file quiz*.yaml");
            }
            if (!ids.isIncomplete(Kind.LINE) && lines.stream().noneMatch(each -> isAbout(each.feature(), feature))) {
                problems.warning(place, "no checklist line is about the feature [" + feature.id() + "]",
                        "add one to checklist.yaml");
            }
        }
    }

    private static boolean isAbout(Optional<FeatureId> named, Feature feature) {
        return named.equals(Optional.of(feature.id()));
    }

    private void checkWays(Feature feature, Collection<Item> items, Place place) {
        List<String> without = Arrays.stream(MachineClass.values())
                .filter(each -> feature.offeringOn(each) == Offering.EXTRA)
                .filter(each -> items.stream().noneMatch(item -> item.classes().contains(each) && gives(item, feature)))
                .map(MachineClass::id)
                .toList();
        if (!without.isEmpty() && !ids.isIncomplete(Kind.ADD_ON) && !ids.isIncomplete(Kind.ATTACHMENT)) {
            problems.warning(place, "the feature [" + feature.id() + "] is offered extra on "
                    + String.join(", ", without) + ", and no add-on or attachment gives it there",
                    "add one, or change the offering");
        }
    }

    private static boolean gives(Item item, Feature feature) {
        return item.gives().stream().anyMatch(effect -> effect.amount().si() > 0
                && effect.of().featureName().equals(Optional.of(feature.id().value())));
    }
}

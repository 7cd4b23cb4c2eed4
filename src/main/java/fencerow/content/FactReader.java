package fencerow.content;

import fencerow.stock.Model;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.Offering;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Turns what is written of a feature, on a model or in a cell of the stock list, into what is known of it. */
final class FactReader {
    private static final int MOST_TOLD_APART = 6;

    private FactReader() {}

    /** What can be written of the feature, for messages. */
    static String allowed(Feature feature) {
        String kinds = feature.kinds().isEmpty() ? "" : ", " + String.join(", ", feature.kinds());
        return "yes, no, unknown" + (feature.most() > 1 ? ", 0 to " + feature.most() : "") + kinds;
    }

    /** Words to choose among: each way it can be fitted, told apart as far as is of use; then not, then not known. */
    static List<String> choices(Feature feature) {
        List<String> choices = new ArrayList<>();
        if (!feature.kinds().isEmpty()) {
            choices.addAll(feature.kinds());
        } else if (feature.most() > 1) {
            IntStream.rangeClosed(1, Math.min(feature.most(), MOST_TOLD_APART))
                    .forEach(count -> choices.add(Integer.toString(count)));
        } else {
            choices.add("yes");
        }
        choices.addAll(List.of("no", "unknown"));
        return choices;
    }

    /** What the text says; empty if it is none of the words and numbers allowed. */
    static Optional<Fact> read(Feature feature, String text) {
        if (text.equals("no") || text.equals("false")) {
            return Optional.of(Fact.absent());
        }
        if (text.equals("yes") || text.equals("true")) {
            return Optional.of(oneOf(fittings(feature, 1)));
        }
        if (text.equals("?") || text.equals("unknown")) {
            return Optional.of(unverified(feature, feature.most()));
        }
        if (feature.kinds().contains(text)) {
            return Optional.of(new Fact.Fitted(1, Optional.of(text)));
        }
        if (feature.most() > 1 && text.matches("\\d{1,2}") && Integer.parseInt(text) <= feature.most()) {
            int count = Integer.parseInt(text);
            return Optional.of(count == 0 ? Fact.absent() : new Fact.Fitted(count, Optional.empty()));
        }
        return Optional.empty();
    }

    /** What a new machine of the model comes with. */
    static Fact asItComes(Model model, Feature feature) {
        Optional<Fact> standard = Optional.ofNullable(model.standard().get(feature.id()));
        if (standard.isPresent()) {
            return standard.get();
        }
        return model.offeringOf(feature) == Offering.INCLUDED ? oneOf(fittings(feature, 1)) : Fact.absent();
    }

    /** What can be taken as known of a used machine of the model that nobody has looked at. */
    static Fact unseen(Model model, Feature feature) {
        return switch (model.offeringOf(feature)) {
            case INCLUDED -> asItComes(model, feature);
            case NEVER -> Fact.absent();
            default -> unverified(feature, model.limits().getOrDefault(feature.id(), feature.most()));
        };
    }

    private static Fact unverified(Feature feature, int most) {
        List<Fact> possible = new ArrayList<>(List.of(Fact.absent()));
        possible.addAll(fittings(feature, most));
        return oneOf(possible);
    }

    private static Fact oneOf(List<Fact> possible) {
        return possible.size() == 1 ? possible.get(0) : new Fact.Unverified(possible);
    }

    private static List<Fact> fittings(Feature feature, int most) {
        if (!feature.kinds().isEmpty()) {
            return feature.kinds().stream()
                    .map(kind -> (Fact) new Fact.Fitted(1, Optional.of(kind)))
                    .toList();
        }
        return IntStream.rangeClosed(1, Math.min(most, MOST_TOLD_APART))
                .mapToObj(count -> (Fact) new Fact.Fitted(count, Optional.empty()))
                .toList();
    }
}

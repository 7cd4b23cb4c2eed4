package fencerow.kiosk.unit;

import fencerow.terms.Amount;
import fencerow.visit.UnitFigure;
import fencerow.wording.SizingWords;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What calculations say of a unit, in words. */
final class FigureWords {
    private final SizingWords words;
    private final Texts texts;

    FigureWords(SizingWords words) {
        this.words = words;
        this.texts = words.texts();
    }

    String name(UnitFigure figure) {
        return texts.get("work.unit." + figure.kind().id());
    }

    /** What it comes to, or why that is not known. */
    String value(UnitFigure figure) {
        if (figure.amount().isEmpty()) {
            return figure.missing().map(why -> texts.get("work.unit.no-" + why.id()))
                    .orElseGet(() -> texts.get("work.unknown"));
        }
        if (figure.kind() == UnitFigure.Kind.LIFTS && figure.amount().get().high().si() == 0) {
            return texts.get("work.unit.nothing-yet");
        }
        String amount = words.amount(figure.amount().get());
        return figure.kind() == UnitFigure.Kind.MOWS
                ? texts.get("work.unit.an-hour", Map.of("amount", amount))
                : amount;
    }

    /** The rules that decided, what was taken, and how it stands against the shopper's own rating. */
    List<String> notes(UnitFigure figure) {
        List<String> notes = new ArrayList<>(figure.limits().stream().map(words::limit).toList());
        Optional.ofNullable(figure.given().numbers().get("hitch-ballast")).ifPresent(weight ->
                notes.add(texts.get("work.unit.with-ballast", Map.of("amount", words.amount(weight)))));
        figure.fuller().map(this::fuller).ifPresent(notes::add);
        figure.rating().ifPresent(rating ->
                figure.amount().ifPresent(amount -> notes.add(against(rating, amount.high()))));
        return notes;
    }

    private String fuller(UnitFigure.Fuller fuller) {
        return fuller.held()
                ? texts.get("work.unit.fuller", Map.of(
                        "weight", words.quantities().show(fuller.weight()),
                        "amount", words.quantities().show(fuller.lifts())))
                : texts.get("work.unit.never-full");
    }

    private String against(Amount rating, Amount most) {
        return texts.get(most.si() <= rating.si() ? "work.unit.within" : "work.unit.over",
                Map.of("rating", words.quantities().show(rating)));
    }
}

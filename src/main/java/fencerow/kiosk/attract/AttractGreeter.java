package fencerow.kiosk.attract;

import fencerow.kiosk.frame.Greeter;
import fencerow.kiosk.frame.Greeting;
import fencerow.kiosk.frame.Premises;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Parent;
import javafx.scene.layout.StackPane;

/** Greets with the page for passers-by as it begins, so that nothing moves when the whole of it is there. */
public final class AttractGreeter implements Greeter {
    @Override
    public Greeting greeting(Premises premises) {
        String language = premises.settings().languages().get(0);
        AttractModel model = AttractModel.of(premises, () -> premises.texts(language));
        Map<String, String> words = new HashMap<>(Map.of("showroom", model.showroom(), "promise", model.promise(),
                "start", model.start(), "moment", model.moment(), "think", model.think(), "truth", model.truth()));
        model.turns().stream().limit(1).forEach(turn -> words.putAll(
                Map.of("belief", turn.belief(), "is", turn.truth())));
        return new Greeting(premises.settings().panel().diagonalMetres(), words);
    }

    @Override
    public Parent page(Greeting greeting, Runnable touched) {
        Map<String, String> words = greeting.words();
        List<AttractModel.Turn> turns = words.containsKey("belief") && words.containsKey("is")
                ? List.of(new AttractModel.Turn(words.get("belief"), words.get("is")))
                : List.of();
        AttractModel model = new AttractModel(word(words, "showroom"), word(words, "promise"), word(words, "start"),
                word(words, "moment"), word(words, "think"), word(words, "truth"), turns);
        return new StackPane(AttractView.greeting(model, touched).node());
    }

    private static String word(Map<String, String> words, String name) {
        return words.getOrDefault(name, "");
    }
}

package fencerow.kiosk.explainer;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Words;
import fencerow.terms.TopicId;
import java.util.Map;
import javafx.scene.layout.VBox;

/** What a trade word means, laid over the screen on which it was touched. */
public final class WordSheet {
    private WordSheet() {}

    /** Lays it; a word that the glossary does not have lays nothing. */
    public static void lay(Frame frame, String id) {
        frame.library().findWord(id).ifPresent(word -> {
            VBox page = Boxes.stack(Words.lead(word.means()));
            word.topic()
                    .filter(topic -> frame.library().find(topic).isPresent())
                    .ifPresent(topic -> page.getChildren().add(more(frame, topic)));
            frame.lay(word.word(), page);
        });
    }

    private static VBox more(Frame frame, TopicId topic) {
        String title = frame.library().find(topic).orElseThrow().title();
        VBox box = new VBox(Buttons.secondary(
                Icon.LEARN, frame.say("word.more", Map.of("title", title)), () -> frame.go(Place.Topic.of(topic))));
        box.setFillWidth(false);
        return box;
    }
}

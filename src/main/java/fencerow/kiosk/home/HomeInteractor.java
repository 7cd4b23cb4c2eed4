package fencerow.kiosk.home;

import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Icon;
import fencerow.wording.Texts;
import java.util.List;

/** Knows which doors there are. */
final class HomeInteractor {
    private final Texts texts;

    HomeInteractor(Texts texts) {
        this.texts = texts;
    }

    List<HomeModel.Door> doors() {
        return List.of(
                door("learn", Icon.LEARN, Place.Topics.FIRST),
                door("fit", Icon.FIT, Place.Questions.NEXT),
                door("test", Icon.QUIZ, Place.Quiz.NEXT));
    }

    private HomeModel.Door door(String key, Icon icon, Place place) {
        String prefix = "kiosk.home." + key;
        return new HomeModel.Door(icon, texts.get(prefix + ".title"), texts.get(prefix + ".text"), place);
    }
}

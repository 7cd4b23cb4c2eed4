package fencerow.kiosk.home;

import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.explainers.Pictures;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Sketch;
import fencerow.wording.Texts;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Knows which doors there are. */
final class HomeInteractor {
    private final Texts texts;
    private final Library library;

    HomeInteractor(Texts texts, Library library) {
        this.texts = texts;
        this.library = library;
    }

    List<HomeModel.Door> doors() {
        return List.of(
                door("learn", Icon.LEARN, Place.Topics.FIRST),
                door("fit", Icon.FIT, Place.Questions.NEXT),
                door("test", Icon.QUIZ, Place.Quiz.NEXT));
    }

    Optional<HomeModel.Tractor> tractor() {
        return library.pictures().tractor(Pictures.Side.SIDE).map(picture -> new HomeModel.Tractor(
                picture.drawing(),
                texts.get(picture.altKey()),
                texts.get("kiosk.home.tractor"),
                library.explainers().stream().collect(Collectors.toMap(
                        explainer -> explainer.topic().value(), Explainer::title)),
                Stream.of(Pictures.Side.FRONT, Pictures.Side.REAR)
                        .flatMap(side -> library.pictures().tractor(side).stream())
                        .map(other -> Sketch.of(other, texts))
                        .toList()));
    }

    private HomeModel.Door door(String key, Icon icon, Place place) {
        String prefix = "kiosk.home." + key;
        return new HomeModel.Door(icon, texts.get(prefix + ".title"), texts.get(prefix + ".text"), place);
    }
}

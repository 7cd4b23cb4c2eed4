package fencerow.kiosk.work;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.kit.Words;
import fencerow.sizing.catalogue.Inputs;
import fencerow.stock.Unit;
import fencerow.terms.UnitId;
import fencerow.visit.Worksheet;
import fencerow.wording.SizingWords;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;

/** One calculation, worked out anew at every touch. */
public final class SheetController implements Screen, SheetModel.Touches {
    private final Frame frame;
    private final Place.Worksheet place;
    private final SheetInteractor interactor;
    private final SheetModel model;
    private final SheetView view;
    private Inputs given;

    private SheetController(Frame frame, Place.Worksheet place, Worksheet sheet) {
        this.frame = frame;
        this.place = place;
        this.given = place.given();
        Optional<Unit> unit = place.unit().flatMap(id -> unit(frame, id));
        this.interactor = new SheetInteractor(
                sheet,
                sheet.fill(frame.visit().get().answers(), unit.map(Unit::model)),
                SizingWords.of(frame.texts(), frame.comfort().metric()));
        Optional<String> forUnit = unit.map(each -> frame.say("worksheet.for-unit",
                Map.of("unit", frame.phrases().labels().unit(each))));
        this.model = new SheetModel(
                interactor.card(place.all(), forUnit, frame.library()), interactor.shown(given));
        this.view = new SheetView(frame, place.scroll(), model, this);
    }

    /** For the place's calculation; empty where the showroom does not offer it. */
    public static Optional<Screen> of(Frame frame, Place.Worksheet place) {
        return frame.premises().showroom().workbook().find(place.calculation())
                .map(sheet -> new SheetController(frame, place, sheet));
    }

    private static Optional<Unit> unit(Frame frame, UnitId id) {
        return Stream.concat(frame.premises().showroom().units().stream(),
                        frame.visit().get().secondQuote().stream())
                .filter(each -> each.id().equals(id))
                .findFirst();
    }

    private void give(Inputs next) {
        given = next;
        model.shown().set(interactor.shown(given));
    }

    @Override
    public void move(String field, int steps) {
        give(interactor.moved(given, field, steps));
    }

    @Override
    public void pick(String field, String option) {
        frame.lift();
        give(given.choosing(field, option));
    }

    @Override
    public void reset() {
        give(Inputs.NONE);
    }

    @Override
    public void showAll(boolean all) {
        frame.goInstead(new Place.Worksheet(place.calculation(), place.unit(), given, all, view.position()));
    }

    @Override
    public void why() {
        frame.lay(frame.say("worksheet.why"), view.why(interactor.why(given)));
    }

    @Override
    public void what() {
        if (model.card().topics().size() == 1) {
            frame.go(Place.Topic.of(model.card().topics().get(0).topic()));
        } else {
            frame.lay(frame.say("worksheet.what"), view.topics(model.card().topics(), topic -> {
                frame.lift();
                frame.go(Place.Topic.of(topic));
            }));
        }
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("work.title");
    }

    @Override
    public Place place() {
        return new Place.Worksheet(place.calculation(), place.unit(), given, place.all(), view.position());
    }

    @Override
    public int words() {
        return Words.count(model.card().ask())
                + model.shown().get().answer().cautions().stream().mapToInt(Words::count).sum();
    }
}

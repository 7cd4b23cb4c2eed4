package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.kiosk.frame.Premises;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Opens every screen in every way it can be shown, and holds it to the rules of {@link LayoutRules}. */
class WalkFxTest {
    static List<WalkPlace> places() {
        return WalkPlace.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void everyScreenKeepsTheRulesInEveryWayItCanBeShown(WalkPlace place) {
        Premises premises = Rooms.premises();
        List<String> broken = new ArrayList<>();
        for (Cell cell : Cell.all()) {
            broken.addAll(Fx.on(() -> cell.show(premises, place, scene -> new LayoutRules(scene, cell).broken().stream()
                    .map(each -> place.name() + "-" + cell + ": " + each)
                    .toList())));
        }
        assertEquals("", String.join("\n", broken));
    }
}

package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Where "back" leads. */
class TrailTest {
    private static Place at(double scroll) {
        return new Place.Results(false, scroll);
    }

    @Test
    void backLeadsToThePlaceLeftAsItLookedThen() {
        Trail trail = Trail.startingAt(new Place.Home()).onward(at(0.4), Place.ListPreview.TOP);

        assertTrue(trail.canGoBack());
        assertEquals(at(0.4), trail.back().here());
        assertFalse(trail.back().canGoBack());
        assertEquals(trail.back(), trail.back().back(), "there is nothing before the first place");
    }

    @Test
    void aPlaceInsteadOfAnotherIsNoStep() {
        Trail trail = Trail.startingAt(new Place.Home()).onward(new Place.Home(), at(0)).instead(at(1));

        assertEquals(at(1), trail.here());
        assertEquals(new Place.Home(), trail.back().here());
    }

    @Test
    void theOldestStepsAreForgotten() {
        Trail trail = Trail.startingAt(new Place.Home());
        for (int i = 0; i < 200; i++) {
            trail = trail.onward(at(i / 200.0), at((i + 1) / 200.0));
        }
        int steps = 0;
        while (trail.canGoBack()) {
            trail = trail.back();
            steps++;
        }
        assertEquals(50, steps);
        assertEquals(at(150 / 200.0), trail.here());
    }
}

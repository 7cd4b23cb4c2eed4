/**
 * The touch screen: the window, idling and background work in {@code kiosk.frame}, our controls and theme in
 * {@code kiosk.kit}, and one sub-package for each screen.
 *
 * <p>The one part that knows JavaFX; within it only {@code kiosk.frame} knows threads.
 *
 * <p>May use {@code terms}, {@code explainers}, {@code stock}, {@code needs}, {@code sizing}, {@code search},
 * {@code match}, {@code quiz}, {@code desk}, {@code checklist}, {@code visit}, {@code wording}, {@code printing}.
 * Read first: {@code Frame}.
 */
@Part(floor = 4, mayUse = {
    "terms", "explainers", "stock", "needs", "sizing", "search", "match", "quiz", "desk", "checklist", "visit",
    "wording", "printing"
})
@NullMarked
package fencerow.kiosk;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

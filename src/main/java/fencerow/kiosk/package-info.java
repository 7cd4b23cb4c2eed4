/**
 * The touch screen: the window, idling and background work in {@code kiosk.frame}, our controls and theme in
 * {@code kiosk.kit}, and one sub-package for each screen.
 *
 * <p>The one part that knows JavaFX; within it only {@code kiosk.frame} knows threads.
 *
 * <p><b>How a screen is made.</b> Its place is a record in {@code frame.Place}; {@code Screens} says which screen
 * belongs to it. A screen is a sub-package of four classes with one first word: the model (a record of what is shown,
 * or observable values where it changes while it is shown), the view (draws the model by the kit, calls functions it
 * was given, decides nothing), the interactor (everything that needs thinking, from the visit to the model; knows no
 * JavaFX and is tested without it) and the controller (implements {@code frame.Screen}, joins the three, takes
 * touches, asks the {@code frame.Frame}).
 * <ul>
 *   <li>The frame draws the heading with "back", and the strip; a screen draws what is between.
 *   <li>Anything that can be longer than the screen goes into a {@code kit.Column}, whose position the place keeps.
 *   <li>An answer is {@code frame.change(visit -> visit.answered(..))}; {@code frame.follow(frame.outlook(), ..)} tells
 *       what it comes to. Other slow work goes to {@code frame.backRoom()}.
 *   <li>{@code frame.go(place)} leads on, {@code frame.goInstead(place)} shows the next question in the same step,
 *       {@code frame.lay(title, node)} lays a sheet over the screen.
 *   <li>Words come from {@code content/LANGUAGE/kiosk.yaml} by {@code frame.say("screen.key")}; looks from the theme in
 *       {@code src/main/resources}, by style classes; no colour, size or distance stands in Java but the ems that an
 *       arrangement needs.
 *   <li>A line in the tests' {@code WalkPlace} takes it into the walk through panels, sizes, contrasts and languages,
 *       and into the contact sheet.
 * </ul>
 *
 * <p>May use {@code terms}, {@code explainers}, {@code stock}, {@code needs}, {@code sizing}, {@code search},
 * {@code match}, {@code quiz}, {@code desk}, {@code checklist}, {@code visit}, {@code wording}, {@code printing}.
 * Read first: {@code Screens}, then {@code frame.Frame}.
 */
@Part(floor = 4, mayUse = {
    "terms", "explainers", "stock", "needs", "sizing", "search", "match", "quiz", "desk", "checklist", "visit",
    "wording", "printing"
})
@NullMarked
package fencerow.kiosk;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

/**
 * Lists and sheets as PDF, print jobs, and what state the printer is in.
 *
 * <p>The one part that knows PDF libraries, printers and {@code java.desktop}.
 *
 * <p>May use {@code terms}, {@code explainers}, {@code stock}, {@code needs}, {@code match}, {@code desk},
 * {@code checklist}, {@code visit}, {@code wording}; all from {@code stock} to {@code visit} only to make a visit's
 * handout and the papers of staff. Read first:
 * {@code Paper}.
 */
@Part(floor = 4, mayUse = {"terms", "explainers", "stock", "needs", "match", "desk", "checklist", "visit", "wording"})
@NullMarked
package fencerow.printing;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

/**
 * The reader of {@code content/} and {@code kiosk-config/}: plain files in, the other parts' records out.
 *
 * <p>Every problem is found, not just the first, and names its file and line. The one part that knows YAML, CSV
 * and CommonMark.
 *
 * <p>May use {@code terms}, {@code explainers}, {@code stock}, {@code needs}, {@code sizing}, {@code search},
 * {@code match}, {@code quiz}, {@code desk}, {@code checklist}, {@code visit}, {@code wording}. Read first:
 * {@code ContentReader}.
 */
@Part(floor = 4, mayUse = {
    "terms", "explainers", "stock", "needs", "sizing", "search", "match", "quiz", "desk", "checklist", "visit",
    "wording"
})
@NullMarked
package fencerow.content;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

/**
 * The command line: one class for each command.
 *
 * <p>The one part that knows picocli, and the only one that writes to the standard streams.
 *
 * <p>May use {@code terms}, {@code explainers}, {@code stock}, {@code needs}, {@code sizing}, {@code search},
 * {@code match}, {@code quiz}, {@code desk}, {@code checklist}, {@code visit}, {@code wording}, {@code content},
 * {@code printing}, {@code storage}. Read first: {@code FencerowCommand}.
 */
@Part(floor = 4, mayUse = {
    "terms", "explainers", "stock", "needs", "sizing", "search", "match", "quiz", "desk", "checklist", "visit",
    "wording", "content", "printing", "storage"
})
@NullMarked
package fencerow.backoffice;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

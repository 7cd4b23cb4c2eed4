/**
 * Lists and sheets as PDF, print jobs, and what state the printer is in.
 *
 * <p>The one part that knows PDF libraries, printers and {@code java.desktop}.
 *
 * <p>May use {@code terms}, {@code checklist}, {@code explainers}, {@code wording}. Read first: {@code Paper}.
 */
@Part(floor = 4, mayUse = {"terms", "checklist", "explainers", "wording"})
@NullMarked
package fencerow.printing;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

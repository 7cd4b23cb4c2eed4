/**
 * The questions about the work, a shopper's answers, the jobs, and the requirements that follow, each with its
 * reason.
 *
 * <p>Answers are about the work, never about the person.
 *
 * <p>May use {@code terms}, {@code stock}. Read first: {@code Needs}.
 */
@Part(floor = 1, mayUse = {"terms", "stock"})
@NullMarked
package fencerow.needs;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

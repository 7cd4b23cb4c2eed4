/**
 * What the shopper believes to be standard equipment, the question that comes next, and the outcome for each
 * feature.
 *
 * <p>Next comes the question with the most at stake.
 *
 * <p>May use {@code terms}, {@code explainers}. Read first: {@code Quiz}.
 */
@Part(floor = 2, mayUse = {"terms", "explainers"})
@NullMarked
package fencerow.quiz;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

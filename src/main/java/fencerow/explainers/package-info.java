/**
 * Articles as a block tree of our own, the glossary, drawings as values, and the links between topics.
 *
 * <p>Nothing here knows how an article was written down or how it is drawn.
 *
 * <p>May use {@code terms}. Read first: {@code Explainer}.
 */
@Part(floor = 1, mayUse = "terms")
@NullMarked
package fencerow.explainers;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

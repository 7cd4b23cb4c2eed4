/**
 * One class for each published calculation, as pure functions with their source, range and caution beside them.
 *
 * <p>No input or output, no clock and no text; results are for choosing what to ask, not for approving a lift or a
 * load.
 *
 * <p>Matching calls the functions here; command line and screens list and run them through
 * {@code fencerow.sizing.catalogue}, which alone names inputs, deciding rules, sources and cautions with each result.
 *
 * <p>May use {@code terms}. Read first: {@code LiftAtDistance}.
 */
@Part(floor = 1, mayUse = "terms")
@NullMarked
package fencerow.sizing;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

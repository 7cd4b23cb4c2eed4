/**
 * Every calculation behind one face, so that a command line and a screen can list and run them: parameters with their
 * dimension, limits and presets, and a result that names its inputs, deciding rule, sources and cautions.
 *
 * <p>Read first: {@code Calculations}.
 */
@NullMarked
package fencerow.sizing.catalogue;

import org.jspecify.annotations.NullMarked;

/**
 * The index over entries that its caller builds, and the hits it gives back in types of its own.
 *
 * <p>The one part that knows Lucene.
 *
 * <p>May use {@code terms}. Read first: {@code Finder}.
 */
@Part(floor = 2, mayUse = "terms")
@NullMarked
package fencerow.search;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

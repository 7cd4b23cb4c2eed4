/**
 * Models, the units in stock or to order, what is known to be fitted to each, and the add-ons, attachments and
 * prices that can be put to them.
 *
 * <p>What nobody has looked at is <em>not verified</em>, which is neither fitted nor absent.
 *
 * <p>May use {@code terms}. Read first: {@code Unit}.
 */
@Part(floor = 1, mayUse = "terms")
@NullMarked
package fencerow.stock;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;

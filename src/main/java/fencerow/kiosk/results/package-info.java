/**
 * Which units suit: a short list with prices and reasons, the must-haves to set aside by a touch, and what would change
 * the answer. Read first: {@code ResultsController}.
 */
@NullMarked
package fencerow.kiosk.results;

import org.jspecify.annotations.NullMarked;

/**
 * All explainers by stop of the walk around a tractor, and the search. Read first: {@code TopicsController}.
 */
@NullMarked
package fencerow.kiosk.topics;

import org.jspecify.annotations.NullMarked;

/**
 * What several screens show alike: a unit as a card or on a line, what the shopper asked for, what would change the
 * answer. Read first: {@code MatchWords}, which puts a match into words, then {@code MatchParts}, which draws them.
 */
@NullMarked
package fencerow.kiosk.matching;

import org.jspecify.annotations.NullMarked;

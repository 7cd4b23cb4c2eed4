package fencerow.kiosk.matching;

import fencerow.match.Verdict;
import fencerow.terms.UnitId;

/**
 * A unit on a line.
 *
 * @param price  ready to work, or as it stands where it cannot be made ready
 * @param remark the weightiest thing to say of it
 */
public record UnitLine(
        UnitId unit, Verdict verdict, String verdictName, String title, String price, String remark, boolean pinned) {}

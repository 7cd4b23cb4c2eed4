package fencerow.kiosk.frame;

import fencerow.checklist.Stakes;
import fencerow.match.Ranking;
import fencerow.needs.Needs;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;

/**
 * What a visit's answers come to, worked out in the background after each answer.
 *
 * @param visit   the answers it was worked out from
 * @param needs   what they ask for
 * @param ranking the units held against that
 * @param stakes  what wrong beliefs cost this shopper
 */
public record Outlook(Visit visit, Needs needs, Ranking ranking, Stakes stakes) {
    /** Works it out; takes long. */
    static Outlook of(Showroom showroom, Visit visit) {
        Ranking ranking = showroom.ranking(visit);
        return new Outlook(visit, showroom.needs(visit), ranking, showroom.stakes(visit, ranking));
    }
}

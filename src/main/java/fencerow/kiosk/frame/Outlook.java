package fencerow.kiosk.frame;

import fencerow.checklist.Stakes;
import fencerow.match.Ranking;
import fencerow.needs.Needs;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * What a visit's answers come to, worked out in the background after each answer.
 *
 * @param visit   the answers it was worked out from
 * @param needs   what they ask for
 * @param ranking the units held against that
 * @param stakes  what wrong beliefs cost this shopper
 */
public record Outlook(Visit visit, Needs needs, Ranking ranking, Stakes stakes) {
    /** The work of working it out. */
    static Callable<Outlook> work(Showroom showroom, Visit visit, Optional<Outlook> before) {
        return () -> of(showroom, visit, before);
    }

    /** Works it out, with what was worked out last for this visit; takes long. */
    static Outlook of(Showroom showroom, Visit visit, Optional<Outlook> last) {
        Ranking ranking = last.map(before -> showroom.ranking(visit, before.ranking()))
                .orElseGet(() -> showroom.ranking(visit));
        return new Outlook(visit, showroom.needs(visit), ranking, showroom.stakes(visit, ranking));
    }
}

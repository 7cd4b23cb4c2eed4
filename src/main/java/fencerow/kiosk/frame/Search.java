package fencerow.kiosk.frame;

import fencerow.search.Query;
import fencerow.search.Results;

/** Finds what the kiosk can show. Called in the background; may wait for an index that is still being made. */
@FunctionalInterface
public interface Search {
    /** What the query comes to. */
    Results find(Query query);
}

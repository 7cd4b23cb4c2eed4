package fencerow.kiosk.frame;

import java.util.List;

/** Finds explainers and trade words by what a shopper types. Answers at once. */
@FunctionalInterface
public interface Search {
    /**
     * The best hits, best first; empty if there is none.
     *
     * @param language of the words, as a BCP 47 tag
     * @param words    as typed so far
     */
    List<Hit> find(String language, String words);

    /**
     * Something found.
     *
     * @param kind    what it is
     * @param id      its topic or trade word
     * @param title   as shown
     * @param excerpt a line of it, plain
     */
    record Hit(Kind kind, String id, String title, String excerpt) {}

    /** What can be found. */
    enum Kind {
        /** An explainer; the id is its topic. */
        TOPIC,
        /** A trade word; the id is the glossary's. */
        WORD
    }
}

package fencerow.desk;

import java.util.List;

/**
 * What can be written in one column of the stock list.
 *
 * @param id      of the column; the feature's where it is one of equipment
 * @param kind    how it is written
 * @param choices the words that can stand there, where it is chosen among words
 * @param least   the smallest number that can stand there, where it is one
 * @param most    the largest
 */
public record StockColumn(String id, Kind kind, List<String> choices, int least, int most) {
    /** How a cell is written. */
    public enum Kind {
        /** One word of some; it must be filled. */
        CHOICE,
        /** A whole number, or nothing. */
        WHOLE,
        /** Whole dollars, or nothing. */
        DOLLARS,
        /** Any number of some words. */
        WORDS,
        /** The name of a picture's file, or nothing. */
        PICTURE,
        /** One word of some for what is known of a piece of equipment, or nothing for as it usually comes. */
        EQUIPMENT
    }

    /** Copies the choices. */
    public StockColumn {
        choices = List.copyOf(choices);
    }

    /** One in which words are chosen. */
    public static StockColumn of(String id, Kind kind, List<String> choices) {
        return new StockColumn(id, kind, choices, 0, 0);
    }

    /** One that holds a number, or a file's name. */
    public static StockColumn of(String id, Kind kind, int least, int most) {
        return new StockColumn(id, kind, List.of(), least, most);
    }
}

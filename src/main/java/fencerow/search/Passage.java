package fencerow.search;

/**
 * A piece of an entry's text that a hit may show.
 *
 * @param heading of the section; empty for the text before the first heading
 * @param words   the text; blocks of it parted by line feeds
 */
public record Passage(String heading, String words) {
    /** A text without a heading. */
    public static Passage of(String words) {
        return new Passage("", words);
    }
}

package fencerow.content;

/**
 * How far the words and articles of one language are translated.
 *
 * @param current    translate the present original
 * @param stale      translate an original that was changed since
 * @param unaccepted of which nobody has said that they translate the present original
 * @param missing    have no translation
 */
public record Translation(int current, int stale, int unaccepted, int missing) {}

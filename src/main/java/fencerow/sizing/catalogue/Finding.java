package fencerow.sizing.catalogue;

/**
 * An answer that is no number: a category, a state, something that a choice takes away.
 *
 * @param about what it is about, such as {@code category}
 * @param id    what was found, such as {@code 1}
 */
public record Finding(String about, String id) {}

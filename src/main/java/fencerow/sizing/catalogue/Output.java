package fencerow.sizing.catalogue;

import fencerow.terms.Dimension;

/**
 * A number that a calculation gives.
 *
 * @param id        the word used in files and text keys, such as {@code ballast-on-hitch}
 * @param dimension what it measures
 */
public record Output(String id, Dimension dimension) {}

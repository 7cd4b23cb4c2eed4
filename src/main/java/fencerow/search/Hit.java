package fencerow.search;

/**
 * Something found.
 *
 * @param kind    what it is
 * @param id      its id among its kind
 * @param title   what it is called
 * @param section heading of the section the excerpt is from; empty if it is from none
 * @param excerpt the passage that matches best
 * @param score   how well it matches against the other hits of the same query; no meaning across queries
 */
public record Hit(Kind kind, String id, Marked title, String section, Marked excerpt, double score) {}

package fencerow.backoffice.document;

/**
 * A caution that belongs beside what is said.
 *
 * @param id   of the caution
 * @param text of it
 */
public record CautionEntry(String id, String text) {}

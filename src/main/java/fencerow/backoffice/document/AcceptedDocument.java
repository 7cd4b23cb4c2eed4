package fencerow.backoffice.document;

/**
 * What {@code translations accept} prints.
 *
 * @param language of the translations
 * @param accepted how many are now known to translate the present words
 */
public record AcceptedDocument(String language, int accepted) {}

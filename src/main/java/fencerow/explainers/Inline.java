package fencerow.explainers;

import fencerow.terms.TopicId;

/** A run of words within a block. */
public sealed interface Inline {
    /** Plain words. */
    record Text(String words) implements Inline {}

    /** Words that matter most. */
    record Strong(String words) implements Inline {}

    /** Words set apart. */
    record Emphasis(String words) implements Inline {}

    /** Words that lead to another explainer. */
    record TopicLink(String words, TopicId topic) implements Inline {}

    /** A trade word that the glossary explains. */
    record WordLink(String words, String glossaryId) implements Inline {}

    /** The words as read aloud or searched. */
    String words();
}

package fencerow.quiz;

/** How an answer to a quiz question turned out. */
public enum Outcome {
    RIGHT,
    WRONG,
    /** The shopper said so. */
    UNSURE
}

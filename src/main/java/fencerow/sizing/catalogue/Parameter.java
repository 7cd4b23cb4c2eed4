package fencerow.sizing.catalogue;

/** Something that a calculation asks for: a number or a choice. */
public sealed interface Parameter permits Measured, Choice {
    /** The word used in files and text keys, such as {@code load-center}. */
    String id();
}

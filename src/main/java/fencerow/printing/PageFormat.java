package fencerow.printing;

/**
 * What the pages are printed on and how large the type is.
 *
 * @param size       of the paper
 * @param largePrint 18 point type on as many pages as it needs, rather than 12 point
 */
public record PageFormat(Size size, boolean largePrint) {
    /** Ordinary type on US Letter. */
    public static final PageFormat LETTER = new PageFormat(Size.LETTER, false);

    /** A size of paper. */
    public enum Size {
        /** 8.5 by 11 inches. */
        LETTER("letter", "8.5in 11in", "na_letter_8.5x11in"),
        /** 210 by 297 millimetres. */
        A4("a4", "210mm 297mm", "iso_a4_210x297mm");

        private final String id;
        private final String css;
        private final String ippName;

        Size(String id, String css, String ippName) {
            this.id = id;
            this.css = css;
            this.ippName = ippName;
        }

        /** The word used in files, and the class of the page in the style sheet. */
        public String id() {
            return id;
        }

        /** Width and height as a style sheet says them. */
        String css() {
            return css;
        }

        /** The self-describing media name of PWG 5101.1, as printers are told it. */
        String ippName() {
            return ippName;
        }
    }

    /** The same paper with ordinary type. */
    public PageFormat ordinary() {
        return new PageFormat(size, false);
    }
}

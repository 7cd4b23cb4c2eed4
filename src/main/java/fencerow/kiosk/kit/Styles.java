package fencerow.kiosk.kit;

/** Names of style classes, each written down once. The theme says what they look like. */
public final class Styles {
    // The whole scene
    public static final String SHELL = "shell";
    public static final String PORTRAIT = "portrait";
    public static final String LANDSCAPE = "landscape";
    public static final String USUAL_CONTRAST = "usual-contrast";
    public static final String HIGH_CONTRAST = "high-contrast";
    /** Followed by the text size's id. */
    public static final String TEXT_SIZE = "text-";
    /** On the root while somebody uses keys. */
    public static final String BY_KEYS = "by-keys";
    public static final String HEADER = "header";
    public static final String STRIP = "strip";
    public static final String SCREEN = "screen";
    public static final String SCRIM = "scrim";
    public static final String SHEET = "sheet";

    // Words
    public static final String DISPLAY = "display";
    public static final String TITLE = "title";
    public static final String HEADING = "heading";
    public static final String SUBHEADING = "subheading";
    public static final String LEAD = "lead";
    public static final String BODY = "body";
    public static final String SMALL = "small";
    public static final String FOLIO = "folio";
    public static final String MUTED = "muted";
    public static final String STRONG = "strong";
    public static final String EMPHASIS = "emphasis";
    public static final String NUMBER = "number";

    // Things to touch
    public static final String TOUCH = "touch";
    public static final String PRIMARY = "primary";
    public static final String SECONDARY = "secondary";
    public static final String QUIET = "quiet";
    public static final String TILE = "tile";
    public static final String MARK = "mark";
    public static final String LINK = "link";
    public static final String KEY = "key";
    public static final String ARMED = "armed";
    public static final String SELECTED = "selected";

    // Arrangement
    public static final String CARD = "card";
    public static final String ROW = "row";
    public static final String STACK = "stack";
    public static final String TIGHT = "tight";
    public static final String LOOSE = "loose";
    public static final String PAGE = "page";
    public static final String RULE = "rule";
    public static final String COLUMN = "column";
    public static final String GUTTER = "gutter";
    public static final String MEASURE = "measure";

    // Parts of the kit
    public static final String ICON = "icon";
    public static final String BADGE = "badge";
    public static final String CAUTION = "caution";
    public static final String PRICE_BAR = "price-bar";
    public static final String PROGRESS = "progress";
    public static final String OFFERING = "offering";
    public static final String STEPPER = "stepper";
    public static final String KEYBOARD = "keyboard";
    public static final String FIELD = "field";
    public static final String DRAWING = "drawing";

    private Styles() {}
}

package fencerow.printing;

/** The sheets that can be printed, each from the template of its name in the paper folder. */
public enum Sheet {
    /** The list: what to check, with the most at stake; one page in ordinary type. */
    LIST("list"),
    /** Three tractors side by side, to be filled in by pencil; one page. */
    COMPARISON("comparison"),
    /** The lines that did not fit on the list. */
    FURTHER_LINES("further-lines"),
    /** Questions for every seller. */
    QUESTIONS("questions"),
    /** What to add up before hauling the tractor home. */
    HAULING("hauling"),
    /** What the shopper got wrong in the quiz, explained. */
    EXPLANATIONS("explanations"),
    /** Whether the smallest and the least able driver can handle the tractor. */
    SIT_TEST("sit-test"),
    /** What to walk through and sign before the tractor stays. */
    DELIVERY_DAY("delivery-day"),
    /** Care in the first year. */
    FIRST_YEAR("first-year"),
    /** For staff: whether the printer prints. */
    TEST_PAGE("test-page");

    private final String id;

    Sheet(String id) {
        this.id = id;
    }

    /** The word used in files. */
    public String id() {
        return id;
    }
}

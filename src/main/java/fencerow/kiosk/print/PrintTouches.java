package fencerow.kiosk.print;

/** What the shopper touched while printing. */
interface PrintTouches {
    void further();

    void print();

    void again();

    void list();

    void results();

    void finish();
}

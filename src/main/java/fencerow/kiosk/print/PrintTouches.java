package fencerow.kiosk.print;

import fencerow.kiosk.frame.ListPrinter;

/** What the shopper touched while printing. */
interface PrintTouches {
    void wanted(ListPrinter.Part part);

    void print();

    void save();

    void takeBack();

    void again();

    void list();

    void results();

    void makeCode();

    void finish();
}

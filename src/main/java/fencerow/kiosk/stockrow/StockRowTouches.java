package fencerow.kiosk.stockrow;

import fencerow.desk.StockColumn;
import java.time.LocalDate;

/** What can be touched on a unit's row. */
interface StockRowTouches {
    void edit(StockColumn column);

    /** Text that is not to be kept yet. */
    void draft(StockColumn column, String text);

    void keep(StockColumn column, String text);

    void hold();

    void holdUntil(LocalDate day);

    void sell();

    void release();

    void verify();

    void list();
}

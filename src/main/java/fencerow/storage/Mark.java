package fencerow.storage;

import org.jdbi.v3.core.Handle;

/**
 * By which data are known again: their name, how often they were changed, and the newest change as it was recorded.
 *
 * @param instance of the data; blank where they have none
 * @param revision grows with each change of the stock
 * @param number   of the newest recorded change; 0 where there is none
 * @param change   its text
 */
record Mark(String instance, long revision, long number, String change) {
    static Mark of(Handle handle) {
        long newest = new UnitTables(handle).nextNumber() - 1;
        return new Mark(
                handle.createQuery("select id from instance").mapTo(String.class).findFirst().orElse(""),
                new UnitTables(handle).revision(), newest, change(handle, newest));
    }

    private static String change(Handle handle, long number) {
        return handle.createQuery("select unit, changed_at, field, before_text, after_text from unit_change "
                        + "where number = :number")
                .bind("number", number)
                .map((row, context) -> row.getString(1) + '\t' + row.getString(2) + '\t' + row.getString(3) + '\t'
                        + row.getString(4) + '\t' + row.getString(5))
                .findFirst()
                .orElse("");
    }

    /** Whether a database holds the same data as when this was its mark, perhaps changed since. */
    boolean isContinuedIn(Handle handle) {
        Mark now = of(handle);
        return now.instance.equals(instance) && now.revision >= revision && change(handle, number).equals(change);
    }
}

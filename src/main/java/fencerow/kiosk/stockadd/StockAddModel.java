package fencerow.kiosk.stockadd;

import java.util.List;

/**
 * A step of telling of a new unit.
 *
 * @param text       typed so far
 * @param note       what to do, or what is wrong
 * @param models     to choose from, where that is the step
 * @param conditions likewise
 * @param canGoOn    whether this step is told
 */
record StockAddModel(
        String text, String note, List<Choice> models, List<Choice> conditions, boolean canGoOn) {
    /** Copies the lists. */
    StockAddModel {
        models = List.copyOf(models);
        conditions = List.copyOf(conditions);
    }

    /** One that can be chosen. */
    record Choice(String key, String words, boolean chosen) {}
}

package fencerow.checklist;

import fencerow.terms.AtStake;
import java.util.List;
import java.util.Optional;

/**
 * One line of a shopper's list.
 *
 * @param template what to check
 * @param atStake  what a wrong belief about it costs this shopper
 * @param expected dollars at stake times the chance of being wrong or missing times relevance; orders lines of one kind
 * @param because  why it is on this list, at least one reason
 * @param place    where it goes
 * @param number   what it is checked against, where the shopper's work says so
 */
public record ChecklistLine(
        LineTemplate template,
        AtStake atStake,
        double expected,
        List<Because> because,
        Place place,
        Optional<LineNumber> number) {
    /** Where a line goes. */
    public enum Place {
        /** Among the lines of page one. */
        PAGE_ONE,
        /** In page one's box of signs to walk away. */
        WALK_AWAY,
        /** On the further sheet, printed on request. */
        FURTHER_SHEET
    }

    /** @throws IllegalArgumentException if there is no reason */
    public ChecklistLine {
        because = List.copyOf(because);
        if (because.isEmpty()) {
            throw new IllegalArgumentException("line [" + template.id() + "] has no reason to be on the list");
        }
    }

    /** A line without a number. */
    public ChecklistLine(LineTemplate template, AtStake atStake, double expected, List<Because> because, Place place) {
        this(template, atStake, expected, because, place, Optional.empty());
    }

    /** The same with a number. */
    public ChecklistLine with(LineNumber other) {
        return new ChecklistLine(template, atStake, expected, because, place, Optional.of(other));
    }

    /** The line's id. */
    public String id() {
        return template.id();
    }

    /** The same in another place. */
    ChecklistLine at(Place other) {
        return new ChecklistLine(template, atStake, expected, because, other, number);
    }
}

package fencerow.printing;

import fencerow.checklist.AddCost;
import fencerow.checklist.ChecklistLine;
import fencerow.explainers.Library;
import fencerow.terms.Money;
import fencerow.terms.Payment;
import fencerow.terms.PriceRange;
import fencerow.visit.ReturnCode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a shopper's pages say. Words are in the shopper's language; nothing in it identifies anyone.
 *
 * @param imprint    what stands on every page
 * @param work       what the shopper wants to get done, as one run of words; empty if they told nothing
 * @param mustHaves  in the order they count
 * @param lines      of the list, wherever they are placed so far
 * @param cautions   ids of the cautions that go with the work, the most fitting first
 * @param tractors   printed into the comparison's first columns; at most three
 * @param library    the explainers of the language
 * @param comeBack   the code that brings the answers back at this kiosk; empty if the shopper asked for none
 */
public record Handout(
        Imprint imprint,
        String work,
        List<MustHave> mustHaves,
        List<ChecklistLine> lines,
        List<String> cautions,
        List<Tractor> tractors,
        Library library,
        Optional<ReturnCode> comeBack) {
    /** The most tractors that stand side by side. */
    public static final int MOST_TRACTORS = 3;

    /** @throws IllegalArgumentException if there are more than three tractors, or one lacks a must-have's cost */
    public Handout {
        mustHaves = List.copyOf(mustHaves);
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
        tractors = List.copyOf(tractors);
        if (tractors.size() > MOST_TRACTORS) {
            throw new IllegalArgumentException(
                    tractors.size() + " tractors do not fit side by side; give at most " + MOST_TRACTORS);
        }
        for (Tractor tractor : tractors) {
            if (tractor.mustHaves().size() != mustHaves.size()) {
                throw new IllegalArgumentException("tractor [" + tractor.model() + "] has "
                        + tractor.mustHaves().size() + " costs for " + mustHaves.size() + " must-haves; give one each");
            }
        }
    }

    /**
     * What stands on every page.
     *
     * @param showroom       whose paper this is
     * @param demo           whether showroom, tractors and prices are invented
     * @param printed        the day
     * @param contentVersion of the words and prices
     */
    public record Imprint(String showroom, boolean demo, LocalDate printed, String contentVersion) {}

    /**
     * One thing the shopper cannot do without.
     *
     * @param words what it is
     * @param cost  of adding it to a tractor that lacks it
     */
    public record MustHave(String words, AddCost cost) {}

    /**
     * A tractor printed into a column of the comparison.
     *
     * @param seller     who sells it; empty if the shopper did not say
     * @param model      maker and model
     * @param yearHours  year, and hours where it has run
     * @param asking     cash price
     * @param extras     freight, set-up and fees
     * @param outTheDoor all of these, before tax
     * @param mustHaves  what each must-have costs to add, in their order
     * @param toSpend    what is still to be added, bought and put right; empty where it can't be made ready
     * @param trade      what the seller allows for the shopper's own tractor
     * @param ready      the ready-to-work price, out the door and to spend less trade; likewise
     * @param verdict    what it comes to, in words
     */
    public record Tractor(
            String seller,
            String model,
            String yearHours,
            Money asking,
            Money extras,
            Money outTheDoor,
            List<AddCost> mustHaves,
            Optional<PriceRange> toSpend,
            Money trade,
            Optional<Payment> ready,
            String verdict) {
        /** Copies the list. */
        public Tractor {
            mustHaves = List.copyOf(mustHaves);
        }
    }
}

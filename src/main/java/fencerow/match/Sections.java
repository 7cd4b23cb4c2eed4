package fencerow.match;

import fencerow.stock.Unit;
import fencerow.terms.Demand;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Cuts one shopper's needs into what has nothing to do with each other: first on any unit of a lot, then on those of
 * each kind, which is quick once the first is done. Confined to one call.
 */
final class Sections {
    private final Lot lot;
    private final Layout layout;
    private final List<Kind> kinds;
    private final Solved solved;

    private Sections(Lot lot, Layout layout, List<Kind> kinds, Solved solved) {
        this.lot = lot;
        this.layout = layout;
        this.kinds = kinds;
        this.solved = solved;
    }

    /**
     * All that decides how needs that have nothing to do with others are cut; the list of units is told apart by
     * identity.
     *
     * @param items      places in the catalogue
     * @param owned      for each item whether the shopper has it
     * @param tooBrief   for each item whether it is a stopgap for fewer hours than the tractor will run
     * @param conditions by the places of items and must-haves among themselves
     */
    record Key(
            List<Unit> units,
            List<Integer> items,
            List<Boolean> owned,
            List<Boolean> tooBrief,
            List<Helpful.Condition> conditions) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key
                    && units == key.units
                    && items.equals(key.items)
                    && owned.equals(key.owned)
                    && tooBrief.equals(key.tooBrief)
                    && conditions.equals(key.conditions);
        }

        @Override
        public int hashCode() {
            return Objects.hash(items, conditions);
        }
    }

    /** A section with its place in the kind. */
    record Placed(Section section, Split.Slice slice) {
        /** Its parts as they are where it comes to the answer, answered, as the kind numbers items and rows. */
        List<Share> shares(Section.Answer answer) {
            return section.shares(answer).stream().map(share -> share.in(slice)).toList();
        }
    }

    /** The sections of each kind; {@code solved} holds what was answered before. */
    static List<List<Placed>> of(Lot lot, Layout layout, List<Kind> kinds, Solved solved) {
        return kinds.isEmpty() ? List.of() : new Sections(lot, layout, kinds, solved).ofKinds();
    }

    private List<List<Placed>> ofKinds() {
        List<Bounds> bounds = Bounds.of(lot, kinds);
        List<List<Placed>> placed = new ArrayList<>();
        kinds.forEach(kind -> placed.add(new ArrayList<>()));
        for (Split.Slice slice : Bounds.around(bounds).split(ofAny(), layout.links())) {
            List<List<Section>> sections = solved.sections(lot, key(slice), () -> cut(slice, bounds));
            for (int k = 0; k < kinds.size(); k++) {
                for (Section section : sections.get(k)) {
                    placed.get(k).add(new Placed(section, section.slice().in(slice)));
                }
            }
        }
        return placed;
    }

    private Key key(Split.Slice slice) {
        List<Integer> items = new ArrayList<>(slice.items().length);
        List<Boolean> owned = new ArrayList<>(slice.items().length);
        List<Boolean> tooBrief = new ArrayList<>(slice.items().length);
        for (int item : slice.items()) {
            items.add(layout.place(item));
            owned.add(layout.needs().owned().contains(layout.items().get(item).id()));
            tooBrief.add(Assortment.isStopgapForTooLong(layout.items().get(item), layout.needs()));
        }
        List<Helpful.Condition> conditions = new ArrayList<>(slice.rows().length);
        for (int r = 0; r < slice.rows().length; r++) {
            Setup.Row row = slice.setup().rows().get(r);
            Demand demand = layout.conditions().get(slice.rows()[r]).demand();
            conditions.add(new Helpful.Condition(row.role(), row.whose(), demand));
        }
        return new Key(lot.units(), items, owned, tooBrief, conditions);
    }

    private List<List<Section>> cut(Split.Slice slice, List<Bounds> bounds) {
        Links links = Links.of(slice.items().length, slice.setup().rows());
        List<List<Section>> sections = new ArrayList<>(kinds.size());
        for (int k = 0; k < kinds.size(); k++) {
            Kind kind = kinds.get(k);
            List<Section> own = new ArrayList<>();
            for (Split.Slice part : bounds.get(k).within(slice.rows()).split(seen(slice, kind), links)) {
                own.add(new Section(lot, kind, slice, part, solved));
            }
            sections.add(own);
        }
        return sections;
    }

    /** What can be had on any unit; what counts by its best source helps most where least is asked. */
    private Setup ofAny() {
        Setup.Items items = layout.setup().items();
        int[] most = new int[items.count()];
        for (Kind kind : kinds) {
            for (int i = 0; i < most.length; i++) {
                most[i] = Math.max(most[i], kind.setup().items().most()[i]);
            }
        }
        List<Setup.Row> rows = new ArrayList<>(layout.setup().rows());
        for (int c = 0; c < rows.size(); c++) {
            if (layout.dependsOnModel(c)) {
                int row = c;
                long least = kinds.stream().mapToLong(kind -> kind.asked(row)).min().orElseThrow();
                rows.set(c, layout.row(c, least));
            }
        }
        return new Setup(new Setup.Items(items.cents(), most, items.minutes(), items.excludes()), rows);
    }

    /** A part of any unit as it is on units of the kind. */
    private Setup seen(Split.Slice slice, Kind kind) {
        Setup.Items all = kind.setup().items();
        Setup.Items any = slice.setup().items();
        long[] cents = new long[any.count()];
        int[] most = new int[cents.length];
        for (int i = 0; i < cents.length; i++) {
            cents[i] = all.cents()[slice.items()[i]];
            most[i] = all.most()[slice.items()[i]];
        }
        List<Setup.Row> rows = slice.setup().rows();
        List<Setup.Row> own = rows;
        for (int r = 0; r < rows.size(); r++) {
            if (layout.dependsOnModel(slice.rows()[r])) {
                own = own == rows ? new ArrayList<>(rows) : own;
                Sparse change = kind.setup().rows().get(slice.rows()[r]).change();
                own.set(r, new Setup.Row(rows.get(r).role(), rows.get(r).whose(), change.within(slice.items())));
            }
        }
        return new Setup(new Setup.Items(cents, most, any.minutes(), any.excludes()), own);
    }
}

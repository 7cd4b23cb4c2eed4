package fencerow.match;

import java.util.ArrayList;
import java.util.List;

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

    /** The sections of each kind; {@code solved} holds what was answered before. */
    static List<List<Section>> of(Lot lot, Layout layout, List<Kind> kinds, Solved solved) {
        return kinds.isEmpty() ? List.of() : new Sections(lot, layout, kinds, solved).ofKinds();
    }

    private List<List<Section>> ofKinds() {
        List<Bounds> bounds = Bounds.of(lot, kinds);
        List<List<Section>> sections = new ArrayList<>();
        kinds.forEach(kind -> sections.add(new ArrayList<>()));
        Bounds all = Bounds.around(bounds);
        Setup any = ofAny();
        for (Split.Slice slice : all.split(any, layout.links())) {
            Links links = Links.of(slice.items().length, slice.problem().setup().rows());
            for (int k = 0; k < sections.size(); k++) {
                Bounds own = bounds.get(k).within(slice.rows());
                Setup setup = seen(slice, kinds.get(k));
                for (Split.Slice part : own.split(setup, links)) {
                    sections.get(k).add(new Section(lot, kinds.get(k), part.in(slice), solved));
                }
            }
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
        Setup.Items any = slice.problem().setup().items();
        long[] cents = new long[any.count()];
        int[] most = new int[cents.length];
        for (int i = 0; i < cents.length; i++) {
            cents[i] = all.cents()[slice.items()[i]];
            most[i] = all.most()[slice.items()[i]];
        }
        List<Setup.Row> rows = slice.problem().setup().rows();
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

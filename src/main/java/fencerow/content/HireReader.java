package fencerow.content;

import fencerow.needs.Job;
import fencerow.terms.PriceRange;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code hire.csv}: what it costs a year to have a job done another way. */
final class HireReader {
    private static final List<String> COLUMNS = List.of("job", "way", "low", "high");

    private final Ids ids;

    HireReader(Ids ids) {
        this.ids = ids;
    }

    /** Prices by job and way. */
    Map<String, Map<Job.OtherWay, PriceRange>> read(SourceFile file, Problems problems) {
        Map<String, Map<Job.OtherWay, PriceRange>> prices = new HashMap<>();
        for (CsvRow row : CsvFile.read(file, COLUMNS, column -> false, COLUMNS, problems).rows()) {
            String job = row.text("job");
            int before = problems.count();
            Job.OtherWay way = row.choice("way", Job.OtherWay.values(), Job.OtherWay::id);
            Optional<PriceRange> price = PriceReader.range(row, "");
            if (price.isEmpty() && problems.count() == before) {
                row.error("low", "the cell is empty", "fill in low and high, or delete the row");
            }
            boolean known = ids.require(job, row.place(), Kind.JOB);
            if (known && price.isPresent()
                    && prices.computeIfAbsent(job, j -> new EnumMap<>(Job.OtherWay.class)).put(way, price.get())
                            != null) {
                row.error("way", "[" + job + "] has a price for [" + way.id() + "] already", "delete one row");
            }
        }
        return prices;
    }
}

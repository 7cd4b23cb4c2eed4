package fencerow.backoffice;

import fencerow.backoffice.document.SizeDocument;
import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Choice;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Parameter;
import fencerow.sizing.catalogue.Result;
import fencerow.terms.Amount;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import fencerow.wording.Quantities;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Calculations and their results as plain text. */
final class SizeText {
    private SizeText() {}

    /** What each calculation takes, with units and presets. */
    static String of(List<Calculation> calculations, Premises premises) {
        var sheet = new TextSheet();
        for (Calculation calculation : calculations) {
            sheet.heading(calculation.id());
            sheet.rows(4, calculation.parameters().stream()
                    .map(parameter -> row(parameter, premises))
                    .toList());
            calculation.parameters().stream()
                    .filter(Choice.class::isInstance)
                    .map(Choice.class::cast)
                    .forEach(choice -> sheet.line(4, choice.id() + ": " + String.join(", ", ids(choice))));
        }
        return sheet.toString();
    }

    private static List<String> ids(Choice<?> choice) {
        return List.copyOf(choice.options().keySet());
    }

    private static List<String> row(Parameter parameter, Premises premises) {
        Texts texts = premises.texts();
        if (parameter instanceof Choice<?> choice) {
            return List.of(choice.id(), texts.get("backoffice.size.choice"),
                    texts.get("backoffice.size.preset", Map.of("preset", choice.preset())));
        }
        return row((Measured<?>) parameter, texts, premises.quantities());
    }

    private static <Q extends Quantity> List<String> row(Measured<Q> measured, Texts texts, Quantities quantities) {
        Spread<Amount> allowed = Spread.of(measured.bounds().min().amount(), measured.bounds().max().amount());
        String preset = measured.preset()
                .map(range -> texts.get("backoffice.size.preset", Map.of("preset", quantities.show(range.amounts()))))
                .orElseGet(() -> texts.get("backoffice.size.no-preset"));
        return List.of(measured.id(), quantities.show(allowed), preset);
    }

    /** A result with its inputs, sources, cautions and warnings. */
    static String of(Result result, SizeDocument document, Premises premises) {
        Texts texts = premises.texts();
        var sheet = new TextSheet();
        sheet.line(0, result.calculation());
        List<List<String>> found = rows(result.amounts(), premises.quantities());
        document.findings().forEach(finding -> found.add(List.of(finding.about(), finding.found())));
        sheet.rows(4, found);
        document.limits().forEach(limit -> sheet.line(4, texts.get("sizing.limit." + limit)));
        document.warnings().forEach(warning -> sheet.point(4, warning.about() + ": " + warning.text()));
        List<List<String>> inputs = rows(result.inputs(), premises.quantities());
        document.choices().forEach(choice -> inputs.add(List.of(choice.id(), choice.option())));
        if (!inputs.isEmpty()) {
            sheet.heading(texts.get("backoffice.size.inputs")).rows(4, inputs);
        }
        sheet.heading(texts.get("backoffice.size.cautions"));
        document.cautions().forEach(caution -> sheet.point(4, caution.text()));
        sheet.heading(texts.get("backoffice.size.sources"));
        document.sources().forEach(source -> sheet.point(4, source(source, texts)));
        return sheet.toString();
    }

    private static String source(SizeDocument.SourceEntry source, Texts texts) {
        String standing = texts.get("sizing.standing." + source.standing());
        return source.citation().equalsIgnoreCase(standing) ? standing : source.citation() + " (" + standing + ")";
    }

    private static List<List<String>> rows(Map<String, Spread<Amount>> ranges, Quantities quantities) {
        List<List<String>> rows = new ArrayList<>();
        ranges.forEach((id, range) -> rows.add(List.of(id, quantities.show(range))));
        return rows;
    }
}

package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.CalculationsDocument;
import fencerow.backoffice.document.SizeDocument;
import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Calculations;
import fencerow.sizing.catalogue.Inputs;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SizeCommandTest {
    private static SizeDocument.RangeEntry amount(SizeDocument document, String id) {
        Map<String, SizeDocument.RangeEntry> amounts = new HashMap<>();
        document.amounts().forEach(amount -> amounts.put(amount.id(), amount));
        return amounts.get(id);
    }

    @Test
    void listNamesEveryCalculationWithWhatItTakes() {
        CalculationsDocument document = Run.of("size", "--json").fine().document(CalculationsDocument.class);

        assertEquals(
                Calculations.all().stream().map(Calculation::id).toList(),
                document.calculations().stream().map(CalculationsDocument.CalculationEntry::id).toList());
        document.calculations().forEach(calculation -> calculation.parameters().forEach(parameter ->
                assertTrue(parameter.number().isPresent() == parameter.options().isEmpty(), parameter.id())));
    }

    @Test
    void everyCalculationRunsOnItsPresetsAndHasWordsForItsCautions() {
        for (Calculation calculation : Calculations.all()) {
            SizeDocument document =
                    SizeDocument.of(calculation.run(Inputs.NONE), Run.shipped().getTexts("en"));

            assertFalse(document.amounts().isEmpty() && document.findings().isEmpty(), calculation.id());
            assertFalse(document.cautions().isEmpty(), calculation.id());
            assertFalse(document.sources().isEmpty(), calculation.id());
        }
    }

    @Test
    void loanComesOutAsAPaymentTableSays() {
        SizeDocument document = Run.of("size", "loan", "principal=$10,000", "rate=6 %", "payments=60", "--json")
                .fine()
                .document(SizeDocument.class);

        // Payment factor at 6 % over 60 months: 0.0193328 (compound interest tables of any engineering economy
        // handbook: capital recovery factor at 0.5 % and n = 60).
        BigDecimal payment = amount(document, "payment").low();
        assertTrue(payment.subtract(new BigDecimal("193.33")).abs().compareTo(new BigDecimal("0.01")) <= 0,
                payment.toPlainString());
    }

    @Test
    void rangesInGiveRangesOut() {
        SizeDocument document = Run.of("size", "loader-payload", "lift-at-pins=1500 to 1800 lb", "--json")
                .fine()
                .document(SizeDocument.class);

        SizeDocument.RangeEntry lift = amount(document, "hydraulic");
        assertTrue(lift.low().compareTo(lift.high()) < 0, lift.toString());
        assertEquals("kg", lift.unit());
    }

    @Test
    void textShowsResultInputsCautionsAndSources() {
        String text = Run.of("size", "loader-payload").fine().out();

        assertTrue(text.contains("Worked out from"), text);
        assertTrue(text.contains("Take care"), text);
        assertTrue(text.contains("Sources"), text);
    }

    @Test
    void whatCannotBeWorkedOutIsWrongUseAndSaysWhatIsAllowed() {
        String unknown = Run.of("size", "loader-payloads").failed(FencerowCommand.WRONG_USE).err();
        assertTrue(unknown.contains("loader-payload,"), unknown);
        String key = Run.of("size", "loader-payload", "reech=70 in").failed(FencerowCommand.WRONG_USE).err();
        assertTrue(key.contains("takes no [reech]; it takes"), key);
        String unit = Run.of("size", "loader-payload", "reach=70 lb").failed(FencerowCommand.WRONG_USE).err();
        assertTrue(unit.contains("[reach]: [lb] is a unit of mass"), unit);
        String range = Run.of("size", "loader-payload", "wheelbase=70 ft").failed(FencerowCommand.WRONG_USE).err();
        assertTrue(range.contains("[wheelbase] cannot be 70\u00a0ft; give "), range);
        String option = Run.of("size", "firewood", "wood=teak").failed(FencerowCommand.WRONG_USE).err();
        assertTrue(option.contains("use one of red-oak"), option);
    }
}

package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.CheckDocument;
import fencerow.content.Content;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
    @Test
    void shippedContentIsFine() {
        assertEquals("no problems, no warnings\n", Run.of("check").fine().out());
    }

    @Test
    void summaryCountsWhatThereIs() {
        CheckDocument document = Run.of("check", "--summary", "--json").fine().document(CheckDocument.class);
        Content content = Run.shipped();

        assertTrue(document.good());
        CheckDocument.Summary summary = document.summary().orElseThrow();
        assertEquals(content.version(), summary.version());
        Map<String, Integer> counts = new HashMap<>();
        summary.counts().forEach(count -> counts.put(count.kind(), count.count()));
        assertEquals(content.showroom().catalogue().features().size(), counts.get("feature"));
        assertEquals(content.showroom().units().size(), counts.get("unit"));
        assertEquals(content.showroom().quiz().questions().size(), counts.get("quiz"));
        assertEquals(content.showroom().composer().templates().size(), counts.get("line"));
        assertEquals(
                content.showroom().catalogue().features().size(),
                summary.areas().stream().mapToInt(CheckDocument.Area::features).sum());
        for (CheckDocument.Area area : summary.areas()) {
            assertTrue(area.explained() <= area.features() && area.addable() <= area.features(), area.stop());
        }
    }

    @Test
    void everyProblemIsNamedWithFileLineAndWhatToDo(@TempDir Path folder) throws IOException {
        Path config = Run.copy("kiosk-config", folder);
        String[] prices = Files.readString(config.resolve("prices.csv")).split("\n", -1);
        prices[1] = prices[1].replace("120,500", "900,500");
        Files.writeString(config.resolve("prices.csv"), String.join("\n", prices));
        Path showroom = config.resolve("showroom.yaml");
        Files.writeString(showroom, Files.readString(showroom).replace("paper: letter ", "paper: legal "));
        List<String> lines = Files.readAllLines(showroom);
        int paperLine = 1 + lines.indexOf(
                lines.stream().filter(line -> line.startsWith("paper:")).findFirst().orElseThrow());

        Run text = Run.of("check", "--config", config.toString());
        Run json = Run.of("check", "--config", config.toString(), "--json", "--summary");

        assertEquals(FencerowCommand.NOT_FINE, text.code());
        assertTrue(text.out().contains("kiosk-config/prices.csv:2: "), text.out());
        assertTrue(text.out().contains("kiosk-config/showroom.yaml:" + paperLine + ": "), text.out());
        assertEquals(FencerowCommand.NOT_FINE, json.code());
        CheckDocument document = json.document(CheckDocument.class);
        assertFalse(document.good());
        assertEquals(Optional.empty(), document.summary());
        assertEquals(
                List.of("kiosk-config/prices.csv", "kiosk-config/showroom.yaml"),
                document.problems().stream().map(CheckDocument.ProblemEntry::file).distinct().toList());
        document.problems().forEach(problem -> assertFalse(problem.whatToDo().isBlank(), problem.what()));
    }

    @Test
    void otherCommandsRefuseBrokenContentAndSayWhy() {
        Run run = Run.of("questions", "--content", "nowhere").failed(FencerowCommand.NOT_FINE);

        assertTrue(run.err().contains("nowhere:1: there is no such folder"), run.err());
    }

    @Test
    void aLanguageThatIsNotOfferedIsWrongUse() {
        Run run = Run.of("questions", "--language", "tlh").failed(FencerowCommand.WRONG_USE);

        assertTrue(run.err().contains("[tlh] is not offered; use one of en"), run.err());
    }
}

package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.CheckDocument;
import fencerow.backoffice.document.LegibilityEntry;
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
        CheckDocument.TranslationEntry spanish = summary.translations().get(0);
        assertEquals("es", spanish.language());
        assertTrue(spanish.current() > 3_000, spanish::toString);
        assertEquals(0, spanish.stale() + spanish.unaccepted() + spanish.missing(), spanish::toString);
        int articles = content.getLibrary("en").explainers().size();
        for (LegibilityEntry each : summary.legibility()) {
            assertEquals(articles, each.kind().equals("articles") ? each.texts() : articles, each::toString);
            assertTrue(each.meanSentence() <= 20, each::toString);
            assertTrue(each.language().equals("es")
                    ? each.hardestValue() >= 55 && each.value() >= each.hardestValue()
                    : each.hardestValue() <= 8 && each.value() <= each.hardestValue(), each::toString);
        }
        assertEquals(4, summary.legibility().size());
    }

    @Test
    void aTranslationIsStaleUntilItIsAccepted(@TempDir Path folder) throws IOException {
        Path content = Run.copy("content", folder);
        Path jobs = content.resolve("en").resolve("catalogue.yaml");
        Files.writeString(jobs, Files.readString(jobs).replace("want: \"clear snow\"", "want: \"clear deep snow\""));

        Run stale = Run.of("check", "--content", content.toString()).fine();
        Run accepted = Run.of("translations", "accept", "es", "job.clear-snow", "--content", content.toString()).fine();

        assertTrue(stale.out().contains("warning: [job.clear-snow.want] is a translation of what"), stale.out());
        assertTrue(accepted.out().startsWith("Accepted "), accepted.out());
        assertEquals("no problems, no warnings\n", Run.of("check", "--content", content.toString()).fine().out());
        Run.of("translations", "accept", "es", "job.clear-sand", "--content", content.toString())
                .failed(FencerowCommand.NOT_FINE);
        Run.of("translations", "accept", "en").failed(FencerowCommand.WRONG_USE);
        Run.of("translations").failed(FencerowCommand.WRONG_USE);
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

package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LastGoodContentTest {
    private static final Path SHIPPED = Path.of("content");

    @TempDir
    Path folder;

    private final Optional<Path> noOtherStock = Optional.empty();

    private Path config() throws IOException {
        Path config = folder.resolve("kiosk-config");
        if (!Files.exists(config)) {
            try (Stream<Path> all = Files.walk(Path.of("kiosk-config"))) {
                for (Path file : all.toList()) {
                    Files.copy(file, folder.resolve(file.toString()));
                }
            }
        }
        return config;
    }

    private static Content good(Reading<Content> reading) {
        return ((Reading.Good<Content>) reading).content();
    }

    private Content read(Optional<Path> stock) throws IOException {
        return good(new ContentReader().read(SHIPPED, config(), stock));
    }

    private List<String> kept() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("data"))) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    private void rename(String from, String to) throws IOException {
        Path file = config().resolve("showroom.yaml");
        Files.writeString(file, Files.readString(file).replace(from, to));
    }

    @Test
    void nothingIsKeptAtFirst() {
        assertEquals(Optional.empty(), new LastGoodContent(folder.resolve("data")).find());
    }

    @Test
    void whatIsKeptIsReadAgainThoughTheFilesBrokeMeanwhile() throws IOException {
        var lastGood = new LastGoodContent(folder.resolve("data"));
        Content content = read(noOtherStock);
        lastGood.keep(content, SHIPPED, config(), noOtherStock);
        Files.writeString(config().resolve("prices.csv"), "nonsense");

        LastGoodContent.Kept kept = lastGood.find().orElseThrow();

        assertEquals(content.version(), kept.content().version());
        assertEquals(content.showroom().units(), kept.content().showroom().units());
        assertTrue(Files.exists(kept.config().resolve("prices.csv")));
    }

    @Test
    void newerContentTakesThePlaceOfOlder() throws IOException {
        var lastGood = new LastGoodContent(folder.resolve("data"));
        Content older = read(noOtherStock);
        lastGood.keep(older, SHIPPED, config(), noOtherStock);
        rename("Tumblegate", "Wrenfold");
        Content newer = read(noOtherStock);
        lastGood.keep(newer, SHIPPED, config(), noOtherStock);
        lastGood.keep(newer, SHIPPED, config(), noOtherStock);

        assertEquals(List.of("good-" + newer.version()), kept());
        assertEquals(newer.settings().name(), lastGood.find().orElseThrow().content().settings().name());
    }

    @Test
    void anotherStockListIsKeptWithIt() throws IOException {
        Path stock = folder.resolve("other.csv");
        Files.write(stock, Files.readAllLines(config().resolve("stock.csv")).subList(0, 4));
        Content content = read(Optional.of(stock));
        var lastGood = new LastGoodContent(folder.resolve("data"));
        lastGood.keep(content, SHIPPED, config(), Optional.of(stock));

        assertEquals(3, lastGood.find().orElseThrow().content().showroom().units().size());
    }

    @Test
    void aDamagedCopyIsPassedOverForTheOneBefore() throws IOException {
        var lastGood = new LastGoodContent(folder.resolve("data"));
        Content content = read(noOtherStock);
        lastGood.keep(content, SHIPPED, config(), noOtherStock);
        Path damaged = Files.createDirectories(folder.resolve("data/good-ffffffff"));

        assertTrue(Files.isDirectory(damaged));
        assertEquals(content.version(), lastGood.find().orElseThrow().content().version());
    }

    @Test
    void filesThatChangeWhileTheyAreCopiedAreNotKept() throws IOException {
        var lastGood = new LastGoodContent(folder.resolve("data"));
        Content content = read(noOtherStock);
        rename("Tumblegate", "Wrenfold");

        IOException e = assertThrows(IOException.class, () ->
                lastGood.keep(content, SHIPPED, config(), noOtherStock));
        assertTrue(e.getMessage().contains("changed"), e.getMessage());
        assertEquals(List.of(), kept());
    }
}

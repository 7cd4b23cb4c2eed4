package fencerow.search;

import static java.nio.charset.StandardCharsets.UTF_8;

import fencerow.backoffice.Finders;
import fencerow.content.Content;
import fencerow.content.ShippedContent;
import fencerow.wording.SearchEntries;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.CRC32;

/** The shipped content as the search sees it, read and indexed once. */
final class Shelf {
    private static final Content CONTENT = ShippedContent.get();
    private static final List<SearchEntries> SOURCES = Finders.sources(CONTENT);
    private static final Finder FINDER = Finder.of(entries(), synonyms(), CONTENT.aliases());

    private static final List<Quality.Asked> ASKED = judged().stream()
            .map(each -> Quality.Asked.of(FINDER, each))
            .toList();

    private Shelf() {}

    static Content content() {
        return CONTENT;
    }

    /** All that can be found, in every language offered. */
    static List<Entry> entries() {
        return SOURCES.stream().flatMap(source -> source.entries().stream()).toList();
    }

    /** What can be found in a session of the language. */
    static List<Entry> entries(String language) {
        return entries().stream().filter(entry -> entry.language().equals(language)).toList();
    }

    static List<Synonym> synonyms() {
        return SOURCES.stream().flatMap(source -> source.synonyms().stream()).toList();
    }

    static Finder finder() {
        return FINDER;
    }

    /** The judged queries, asked once. */
    static List<Quality.Asked> asked() {
        return ASKED;
    }

    static List<Judged> judged() {
        String file = "src/test/resources/search/judged.tsv";
        try {
            return Judged.read(file, Files.readAllLines(Path.of(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Half of the judged queries was never looked at while the ranking was tuned; a hash says which. */
    static boolean isHeldOut(Judged judged) {
        var hash = new CRC32();
        hash.update((judged.text() + "\t" + judged.language()).getBytes(UTF_8));
        return hash.getValue() % 2 == 1;
    }
}

package fencerow.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.miscellaneous.PerFieldAnalyzerWrapper;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SerialMergeScheduler;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TermStates;
import org.apache.lucene.search.Collector;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.LeafCollector;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.Scorable;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.similarities.BM25Similarity;
import org.apache.lucene.search.similarities.PerFieldSimilarityWrapper;
import org.apache.lucene.search.similarities.Similarity;
import org.apache.lucene.store.ByteBuffersDataOutput;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.SingleInstanceLockFactory;
import org.jspecify.annotations.Nullable;

/** The index in memory. One segment without deletions, so that a document's number is its entry's place. */
final class Index {
    /** What an entry is called on screen, by language. */
    static final String TITLE = "title.";
    /** What else people call it; all names in every language's stems. */
    static final String NAMES = "names.";
    /** Words that lead to it. */
    static final String RELATED = "related.";
    /** Its first passage and its headings. */
    static final String LEAD = "lead.";
    /** All its passages, as shown. */
    static final String TEXT = "text.";
    /** Title and names as written. */
    static final String CALLED = "called";
    /** Title and passages as written: all that may be shown. */
    static final String SHOWN = "shown";
    /** Beginnings of the words of title and names. */
    static final String STARTS = "starts";
    /** Neighbouring words of title, names and first passage as one. */
    static final String JOINED = "joined";
    /** Letter groups of title and names. */
    static final String GRAMS = "grams";
    /** Title and each name whole, in stems. */
    static final String WHOLE = "whole";
    /** The title whole, in stems. */
    static final String WHOLE_TITLE = "whole-title";

    private static final double BUFFER_MB = 256;

    private final List<Entry> entries;
    private final List<String> languages;
    private final List<String> entryLanguages;
    private final IndexSearcher searcher;

    private final Vocabulary vocabulary;

    private Index(List<Entry> entries, List<String> languages, IndexSearcher searcher) {
        this.entries = entries;
        this.languages = languages;
        this.entryLanguages =
                entries.stream().map(Entry::language).distinct().sorted().toList();
        this.searcher = searcher;
        this.vocabulary = Vocabulary.of(searcher.getIndexReader());
    }

    /** Indexes the entries in their order. */
    static Index of(List<Entry> entries) {
        var languages = new TreeSet<>(List.of("en", "es"));
        entries.forEach(entry -> languages.add(entry.language()));
        var directory = new ByteBuffersDirectory(
                new SingleInstanceLockFactory(), ByteBuffersDataOutput::new, ByteBuffersDirectory.OUTPUT_AS_BYTE_ARRAY);
        var config = new IndexWriterConfig(analyzers(languages))
                .setSimilarity(similarity())
                .setMergeScheduler(new SerialMergeScheduler())
                .setRAMBufferSizeMB(BUFFER_MB)
                .setUseCompoundFile(false);
        try {
            try (var writer = new IndexWriter(directory, config)) {
                var documents = new Documents(List.copyOf(languages));
                for (Entry entry : entries) {
                    writer.addDocument(documents.of(entry));
                }
                writer.forceMerge(1);
            }
            var searcher = new IndexSearcher(DirectoryReader.open(directory));
            searcher.setSimilarity(similarity());
            searcher.setQueryCache(null);
            return new Index(List.copyOf(entries), List.copyOf(languages), searcher);
        } catch (IOException e) {
            throw new UncheckedIOException("the index in memory could not be written", e);
        }
    }

    private static Analyzer analyzers(Iterable<String> languages) {
        Map<String, Analyzer> byField = new HashMap<>();
        for (String language : languages) {
            Analyzer stemmed = Analysis.stemmed(language);
            for (String field : List.of(TITLE, NAMES, RELATED, LEAD, TEXT)) {
                byField.put(field + language, stemmed);
            }
        }
        byField.put(STARTS, Analysis.starts());
        byField.put(JOINED, Analysis.joined());
        byField.put(GRAMS, Analysis.grams());
        return new PerFieldAnalyzerWrapper(Analysis.surface(), byField);
    }

    /** Long titles and texts weigh a little less; many names are no fault. */
    private static Similarity similarity() {
        var title = new BM25Similarity(0.6f, 0.5f);
        var names = new BM25Similarity(0.3f, 0.1f);
        var text = new BM25Similarity(1.2f, 0.6f);
        return new PerFieldSimilarityWrapper() {
            @Override
            public Similarity get(String field) {
                if (field.startsWith(TITLE)) {
                    return title;
                }
                return field.startsWith(LEAD) || field.startsWith(TEXT) || field.equals(SHOWN) ? text : names;
            }
        };
    }

    /** The entries; a document's number is its entry's place here. */
    List<Entry> entries() {
        return entries;
    }

    /** Languages whose stems are indexed. */
    List<String> languages() {
        return languages;
    }

    /** Languages that entries are in. */
    List<String> entryLanguages() {
        return entryLanguages;
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    /** Where the word is in the field; empty if it is nowhere. */
    Optional<TermStates> states(Term term) {
        try {
            return Optional.of(TermStates.build(searcher, term, true)).filter(states -> states.docFreq() > 0);
        } catch (IOException e) {
            throw new UncheckedIOException("the index in memory could not be read", e);
        }
    }

    /** Whether a word of a title or name begins so. */
    boolean hasStart(String start) {
        return states(new Term(STARTS, start)).isPresent();
    }

    /** Whether the word, or in this language another form of it, is anywhere. */
    boolean isKnown(Reading.Word word, String language) {
        return vocabulary.find(word.folded()).isPresent()
                || word.stem(language)
                        .filter(stem -> Stream.of(NAMES, TITLE, TEXT)
                                .anyMatch(field -> states(new Term(field + language, stem)).isPresent()))
                        .isPresent();
    }

    /** The query's score for every entry, 0 where it does not match. */
    float[] scores(Query query) {
        float[] scores = new float[entries.size()];
        try {
            searcher.search(query, new ScoreKeeper(scores));
        } catch (IOException e) {
            throw new UncheckedIOException("the index in memory could not be read", e);
        }
        return scores;
    }

    /** Keeps every score; there is one segment, so one collector. */
    private record ScoreKeeper(float[] scores) implements CollectorManager<ScoreKeeper.Keeping, float[]> {
        @Override
        public Keeping newCollector() {
            return new Keeping(scores);
        }

        @Override
        public float[] reduce(Collection<Keeping> collectors) {
            return scores;
        }

        private static final class Keeping implements Collector {
            private final float[] scores;

            Keeping(float[] scores) {
                this.scores = scores;
            }

            @Override
            public LeafCollector getLeafCollector(LeafReaderContext context) {
                return new LeafCollector() {
                    private @Nullable Scorable scorer;

                    @Override
                    public void setScorer(Scorable scorer) {
                        this.scorer = scorer;
                    }

                    @Override
                    public void collect(int doc) throws IOException {
                        scores[context.docBase + doc] = scorer == null ? 0 : scorer.score();
                    }
                };
            }

            @Override
            public ScoreMode scoreMode() {
                return ScoreMode.COMPLETE;
            }
        }
    }

    /** Makes documents of entries. */
    private record Documents(List<String> languages, Reader reader) {
        Documents(List<String> languages) {
            this(languages, new Reader(languages));
        }

        Document of(Entry entry) {
            var document = new Document();
            String language = entry.language();
            add(document, TITLE + language, entry.title());
            add(document, TEXT + language, Excerpts.text(entry));
            add(document, LEAD + language, lead(entry));
            add(document, SHOWN, entry.title() + "\n" + Excerpts.text(entry));
            entry.related().forEach(words -> languages.forEach(each -> add(document, RELATED + each, words)));
            add(document, JOINED, lead(entry));
            addCalled(document, entry.title());
            addWholes(document, WHOLE_TITLE, entry.title());
            for (String name : entry.names()) {
                addCalled(document, name);
                languages.forEach(each -> add(document, NAMES + each, name));
            }
            return document;
        }

        private void addCalled(Document document, String name) {
            List.of(CALLED, STARTS, JOINED, GRAMS).forEach(field -> add(document, field, name));
            addWholes(document, WHOLE, name);
        }

        private void addWholes(Document document, String field, String name) {
            for (String whole : new TreeSet<>(reader.wholes(name))) {
                document.add(new StringField(field, whole, Field.Store.NO));
            }
        }

        private static String lead(Entry entry) {
            return entry.passages().stream()
                    .map(passage -> passage.heading().isEmpty() ? passage.words() : passage.heading())
                    .collect(Collectors.joining("\n"));
        }

        private static void add(Document document, String field, String words) {
            document.add(new TextField(field, words, Field.Store.NO));
        }
    }
}

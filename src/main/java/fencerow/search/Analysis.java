package fencerow.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.StopFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.es.SpanishAnalyzer;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.ngram.EdgeNGramTokenFilter;
import org.apache.lucene.analysis.ngram.NGramTokenFilter;
import org.apache.lucene.analysis.shingle.ShingleFilter;
import org.apache.lucene.analysis.snowball.SnowballFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.tokenattributes.TypeAttribute;
import org.tartarus.snowball.SnowballStemmer;
import org.tartarus.snowball.ext.EnglishStemmer;
import org.tartarus.snowball.ext.SpanishStemmer;

/** How text becomes words of the index. Case and accents are folded everywhere, measures made one word. */
final class Analysis {
    /** Longest beginning of a word that is indexed by itself. */
    static final int LONGEST_START = 12;
    /** Length of the letter groups by which the nearest topics are found. */
    static final int GRAM = 3;

    /** Words of questions, beyond the library's own list, that say nothing about what is asked. */
    private static final Set<String> ASKING = Set.of(
            "am", "any", "can", "cant", "could", "do", "does", "dont", "get", "had", "has", "have", "how", "i", "id",
            "im", "ill", "its", "ive", "me", "my", "need", "our", "please", "should", "so", "some", "tell", "thing",
            "those", "want", "wants", "we", "what", "whats", "when", "where", "which", "who", "why", "would", "you",
            "your", "from", "about");

    private static final Map<String, Set<String>> STOP = Map.of(
            "en", union(EnglishAnalyzer.getDefaultStopSet(), ASKING),
            "es", union(SpanishAnalyzer.getDefaultStopSet(), Set.of("quiero", "necesito")));

    private Analysis() {}

    private static Set<String> union(CharArraySet library, Set<String> own) {
        Set<String> words = new HashSet<>(own);
        library.forEach(word -> words.add(folded(new String((char[]) word))));
        return Set.copyOf(words);
    }

    private static String folded(String word) {
        char[] letters = word.toCharArray();
        char[] plain = new char[letters.length * 4];
        int length = ASCIIFoldingFilter.foldToASCII(letters, 0, plain, 0, letters.length);
        return new String(plain, 0, length);
    }

    /** Whether the folded word says nothing in the language. */
    static boolean isStop(String language, String word) {
        return STOP.getOrDefault(language, Set.of()).contains(word);
    }

    /** Stems of single folded words; for use by one thread. */
    static UnaryOperator<String> stemmer(String language) {
        SnowballStemmer stemmer = newStemmer(language);
        return word -> {
            stemmer.setCurrent(word);
            stemmer.stem();
            return stemmer.getCurrent();
        };
    }

    private static SnowballStemmer newStemmer(String language) {
        return language.equals("es") ? new SpanishStemmer() : new EnglishStemmer();
    }

    /** Words as written. */
    static Analyzer surface() {
        return analyzer(UnaryOperator.identity());
    }

    /** Stems without the words that say nothing. */
    static Analyzer stemmed(String language) {
        var stop = STOP.getOrDefault(language, Set.of()).stream()
                .collect(Collectors.toCollection(() -> new CharArraySet(512, false)));
        return analyzer(words -> new SnowballFilter(new StopFilter(words, stop), newStemmer(language)));
    }

    /** All beginnings of words. */
    static Analyzer starts() {
        return analyzer(words -> new EdgeNGramTokenFilter(words, 1, LONGEST_START, true));
    }

    /** Neighbouring words written as one. */
    static Analyzer joined() {
        return analyzer(words -> {
            var pairs = new ShingleFilter(words, 2, 2);
            pairs.setOutputUnigrams(false);
            pairs.setTokenSeparator("");
            return pairs;
        });
    }

    /** Groups of neighbouring letters. */
    static Analyzer grams() {
        return analyzer(words -> new NGramTokenFilter(words, GRAM, GRAM, true));
    }

    private static Analyzer analyzer(UnaryOperator<TokenStream> further) {
        return new Analyzer() {
            @Override
            protected TokenStreamComponents createComponents(String field) {
                var tokenizer = new StandardTokenizer();
                TokenStream words = new ASCIIFoldingFilter(new LowerCaseFilter(tokenizer));
                return new TokenStreamComponents(tokenizer, further.apply(new MeasureFilter(words)));
            }

            @Override
            public int getPositionIncrementGap(String field) {
                return 100;
            }
        };
    }

    /**
     * One word of a text, as the index has it.
     *
     * @param measure whether it is an amount with its unit, the bare number before it included
     * @param from    where it begins in the text
     * @param to      where it ends, exclusive
     */
    record Token(String word, boolean measure, int from, int to) {}

    /** The words of a text in their order. */
    static List<Token> tokens(Analyzer analyzer, String text) {
        List<Token> tokens = new ArrayList<>();
        try (var stream = analyzer.tokenStream("", text)) {
            var term = stream.addAttribute(CharTermAttribute.class);
            var offset = stream.addAttribute(OffsetAttribute.class);
            var type = stream.addAttribute(TypeAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                boolean measure = type.type().equals(MeasureFilter.MEASURE);
                // The bare number before it goes into it.
                int from = measure ? tokens.remove(tokens.size() - 1).from() : offset.startOffset();
                tokens.add(new Token(term.toString(), measure, from, offset.endOffset()));
            }
            stream.end();
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory could not be read", e);
        }
        return tokens;
    }
}

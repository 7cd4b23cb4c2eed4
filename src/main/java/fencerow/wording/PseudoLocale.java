package fencerow.wording;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.Part;
import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.GlossaryWord;
import fencerow.explainers.Inline;
import fencerow.explainers.Library;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A language that does not exist, made from a real one to test screens and paper: letters have accents, and words
 * are some 40 % longer because vowels, n and s are doubled. Words on a screen without an accent did not come from the
 * content.
 */
public final class PseudoLocale {
    /** Its tag; private use by BCP 47. */
    public static final String LANGUAGE = "qps";

    private static final String PLAIN = "abcdefghijklmnoprstuvwyzABCDEFGHIJKLMNOPRSTUVWYZ";
    private static final String ACCENTED = "ábçďéƒğĥíĵķĺmńópŕšťúvŵýžÁBÇĎÉFĞĤÍĴĶĹMŃÓPŔŠŤÚVŴÝŽ";
    private static final String DOUBLED = "aeiouynsAEIOUYNS";

    private PseudoLocale() {}

    /** The words of a language, changed; arguments and plural rules stay. */
    public static Texts of(Texts texts) {
        Map<String, String> patterns = new TreeMap<>();
        for (String key : texts.keys()) {
            patterns.put(key, ofPattern(texts.get(key)));
        }
        return new Texts(LANGUAGE, patterns);
    }

    /** The articles and trade words of a language, changed; topics and ids stay. */
    public static Library of(Library library) {
        List<Explainer> explainers = library.explainers().stream().map(PseudoLocale::of).toList();
        List<GlossaryWord> glossary = library.glossary().stream()
                .map(word -> new GlossaryWord(word.id(), ofWords(word.word()), ofWords(word.means()),
                        word.also().stream().map(PseudoLocale::ofWords).toList(), word.topic()))
                .toList();
        return new Library(LANGUAGE, explainers, glossary, library.pictures());
    }

    private static Explainer of(Explainer explainer) {
        return new Explainer(explainer.topic(), LANGUAGE, ofWords(explainer.title()), ofWords(explainer.summary()),
                explainer.stop(), explainer.related(), explainer.quiz(), explainer.cautions(),
                explainer.blocks().stream().map(PseudoLocale::of).toList());
    }

    private static Block of(Block block) {
        if (block instanceof Block.Heading heading) {
            return new Block.Heading(ofWords(heading.words()));
        }
        if (block instanceof Block.Paragraph paragraph) {
            return new Block.Paragraph(ofRuns(paragraph.words()));
        }
        if (block instanceof Block.Points points) {
            return new Block.Points(points.numbered(), points.points().stream().map(PseudoLocale::ofRuns).toList());
        }
        if (block instanceof Block.Table table) {
            return new Block.Table(ofCells(table.head()), table.rows().stream().map(PseudoLocale::ofCells).toList());
        }
        return block;
    }

    private static List<String> ofCells(List<String> cells) {
        return cells.stream().map(PseudoLocale::ofWords).toList();
    }

    private static List<Inline> ofRuns(List<Inline> runs) {
        return runs.stream().map(PseudoLocale::of).toList();
    }

    private static Inline of(Inline run) {
        String words = ofWords(run.words());
        if (run instanceof Inline.Strong) {
            return new Inline.Strong(words);
        }
        if (run instanceof Inline.Emphasis) {
            return new Inline.Emphasis(words);
        }
        if (run instanceof Inline.TopicLink link) {
            return new Inline.TopicLink(words, link.topic());
        }
        if (run instanceof Inline.WordLink link) {
            return new Inline.WordLink(words, link.glossaryId());
        }
        return new Inline.Text(words);
    }

    /** A pattern with its literal words changed and its arguments, selectors and quotes kept. */
    static String ofPattern(String pattern) {
        var parsed = new MessagePattern(pattern);
        var result = new StringBuilder();
        int done = 0;
        boolean literal = true;
        for (int i = 0; i < parsed.countParts(); i++) {
            Part part = parsed.getPart(i);
            String between = pattern.substring(done, Math.max(done, part.getIndex()));
            result.append(literal ? ofWords(between) : between);
            done = Math.max(done, part.getIndex());
            // Words are literal inside a message, syntax inside an argument; the two nest alternately.
            literal = switch (part.getType()) {
                case ARG_START, MSG_LIMIT -> false;
                case ARG_LIMIT, MSG_START -> true;
                default -> literal;
            };
            result.append(pattern, done, Math.max(done, part.getLimit()));
            done = Math.max(done, part.getLimit());
        }
        return result.append(pattern.substring(done)).toString();
    }

    private static String ofWords(String words) {
        var result = new StringBuilder();
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            int at = PLAIN.indexOf(c);
            char accented = at < 0 ? c : ACCENTED.charAt(at);
            result.append(accented);
            if (DOUBLED.indexOf(c) >= 0) {
                result.append(Character.toLowerCase(accented));
            }
        }
        return result.toString();
    }
}

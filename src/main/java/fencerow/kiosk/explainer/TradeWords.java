package fencerow.kiosk.explainer;

import fencerow.explainers.Block;
import fencerow.explainers.GlossaryWord;
import fencerow.explainers.Inline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Links trade words of the glossary where an explainer first uses them. */
final class TradeWords {
    private record Spelling(GlossaryWord word, Pattern pattern) {}

    private final List<Spelling> open = new ArrayList<>();
    private final List<GlossaryWord> linked = new ArrayList<>();

    /** Those that may be linked; longer ones come first, so that a word within another is not taken for it. */
    TradeWords(List<GlossaryWord> glossary) {
        glossary.stream()
                .sorted(Comparator.comparingInt((GlossaryWord word) -> word.word().length()).reversed())
                .forEach(word -> open.add(new Spelling(word, spelling(word.word()))));
    }

    private static Pattern spelling(String word) {
        return Pattern.compile("(?<![\\p{L}\\p{N}-])" + Pattern.quote(word) + "s?(?![\\p{L}\\p{N}-])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** The words linked so far, in reading order. */
    List<GlossaryWord> linked() {
        return List.copyOf(linked);
    }

    /** The block with words linked; headings and tables are left as they are. */
    Block link(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return new Block.Paragraph(link(paragraph.words()));
        }
        if (block instanceof Block.Points points) {
            return new Block.Points(points.numbered(), points.points().stream().map(this::link).toList());
        }
        return block;
    }

    private List<Inline> link(List<Inline> runs) {
        List<Inline> all = new ArrayList<>();
        for (Inline run : runs) {
            if (run instanceof Inline.Text text) {
                all.addAll(link(text.words()));
            } else {
                all.add(run);
            }
        }
        return all;
    }

    private record Found(Spelling spelling, int start, int end) {}

    private List<Inline> link(String words) {
        Optional<Found> first = open.stream()
                .flatMap(each -> {
                    Matcher matcher = each.pattern().matcher(words);
                    return matcher.find()
                            ? Optional.of(new Found(each, matcher.start(), matcher.end())).stream()
                            : Optional.<Found>empty().stream();
                })
                .min(Comparator.comparingInt(Found::start));
        if (first.isEmpty()) {
            return List.of(new Inline.Text(words));
        }
        Found found = first.get();
        open.remove(found.spelling());
        linked.add(found.spelling().word());
        List<Inline> all = new ArrayList<>();
        if (found.start() > 0) {
            all.add(new Inline.Text(words.substring(0, found.start())));
        }
        all.add(new Inline.WordLink(
                words.substring(found.start(), found.end()), found.spelling().word().id()));
        if (found.end() < words.length()) {
            all.addAll(link(words.substring(found.end())));
        }
        return all;
    }
}

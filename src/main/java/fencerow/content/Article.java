package fencerow.content;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The file of an article, cut where its particulars end. Both parts keep the line numbers of the whole.
 *
 * @param file  the whole
 * @param head  its particulars, YAML
 * @param body  its text, CommonMark
 * @param start the line above the text, from 1
 */
record Article(SourceFile file, String head, String body, int start) {
    private static final String FENCE = "---";

    /** Cuts it; a file that has no particulars is reported. */
    static Optional<Article> of(SourceFile file, Problems problems) {
        String[] lines = file.text().split("\n", -1);
        int close = closingFence(lines);
        if (close < 0) {
            problems.error(file.at(1), "the article does not start with its particulars",
                    "start with a line ---, then topic: and the others, then a line ---");
            return Optional.empty();
        }
        String head = "\n" + String.join("\n", List.of(lines).subList(1, close)) + "\n";
        String body = "\n".repeat(close + 1) + String.join("\n", List.of(lines).subList(close + 1, lines.length));
        return Optional.of(new Article(file, head, body, close + 1));
    }

    private static int closingFence(String[] lines) {
        if (!lines[0].strip().equals(FENCE)) {
            return -1;
        }
        for (int i = 1; i < lines.length; i++) {
            if (lines[i].strip().equals(FENCE)) {
                return i;
            }
        }
        return -1;
    }

    /** The topic a file is about, by its name. */
    static String topicOf(String fileName) {
        return fileName.substring(fileName.lastIndexOf('/') + 1, fileName.length() - ".md".length());
    }

    /** What of it is translated: title, summary and text. */
    String words() {
        Optional<YamlNode> top = YamlFile.read(new SourceFile(file.name(), head), new Problems());
        String named = top.filter(YamlNode::isMap).map(YamlNode::entries).orElse(List.of()).stream()
                .filter(entry -> List.of("title", "summary").contains(entry.key()) && entry.value().isScalar())
                .map(entry -> entry.value().text())
                .collect(Collectors.joining("\n"));
        return Stream.of(named, body.strip()).collect(Collectors.joining("\n\n"));
    }

    /** The line that starts with the particular; the first where none does. */
    Place placeOf(String particular) {
        String[] lines = head.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].startsWith(particular + ":")) {
                return file.at(i + 1);
            }
        }
        return file.at(1);
    }
}

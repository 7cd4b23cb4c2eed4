package fencerow.content;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The files one reading starts from, and which of them were asked for. */
final class Sources {
    private static final int VERSION_DIGITS = 8;
    private static final Pattern GLOSSARY = Pattern.compile("[a-z]{2,3}/glossary\\.yaml");

    private final SourceTree content;
    private final SourceTree config;
    private final Optional<SourceFile> stock;
    private final boolean otherStock;
    private final Problems problems;
    private final Set<SourceFile> used = new HashSet<>();

    private Sources(SourceTree content, SourceTree config, Optional<SourceFile> stock, boolean otherStock,
            Problems problems) {
        this.content = content;
        this.config = config;
        this.stock = stock;
        this.otherStock = otherStock;
        this.problems = problems;
    }

    static Sources read(Path content, Path config, Optional<Path> stockOverride, Problems problems) {
        SourceTree contentTree = SourceTree.read(content, problems);
        SourceTree configTree = SourceTree.read(config, problems);
        Optional<SourceFile> stock = stockOverride.isPresent()
                ? SourceFile.read(stockOverride.get(), stockOverride.get().toString(), problems)
                : configTree.find("stock.csv");
        return new Sources(contentTree, configTree, stock, stockOverride.isPresent(), problems);
    }

    Optional<YamlNode> contentYaml(String name) {
        return yaml(content, name);
    }

    /** A file of the showroom's that need not be there. */
    Optional<YamlNode> configYamlIfThere(String name) {
        return config.find(name).isPresent() ? configYaml(name) : Optional.empty();
    }

    Optional<YamlNode> configYaml(String name) {
        return yaml(config, name);
    }

    private Optional<YamlNode> yaml(SourceTree tree, String name) {
        return take(tree, name).flatMap(file -> {
            int before = problems.count();
            Optional<YamlNode> top = YamlFile.read(file, problems);
            if (top.isEmpty() && problems.count() == before) {
                problems.error(file.at(1), "the file is empty", "write something in it, or delete it");
            }
            return top;
        });
    }

    /** Whether a file of the showroom's could be read. */
    boolean hasConfig(String name) {
        return config.find(name).isPresent();
    }

    /** Whether the folder of the content could be read. */
    boolean hasContent() {
        return content.isThere();
    }

    /** A file of the showroom's that must be there. */
    Optional<SourceFile> config(String name) {
        return take(config, name);
    }

    private Optional<SourceFile> take(SourceTree tree, String name) {
        Optional<SourceFile> file = tree.find(name);
        file.ifPresent(used::add);
        if (file.isEmpty() && !tree.isBroken(name)) {
            problems.error(new Place(tree.nameOf(name), 1), "there is no such file", "create it");
        }
        return file;
    }

    /** The stock list to read. */
    Optional<SourceFile> stock() {
        return otherStock ? stock : take(config, "stock.csv");
    }

    /** Files straight in a folder of the content with a name that starts and ends so. */
    List<String> contentNames(String folder, String start, String end) {
        return content.names(name -> name.startsWith(folder + start) && name.endsWith(end)
                && name.indexOf('/', folder.length()) < 0);
    }

    /** Languages that have a glossary, offered or not. */
    List<String> glossaryLanguages() {
        return content.names(name -> GLOSSARY.matcher(name).matches()).stream()
                .map(name -> name.substring(0, name.indexOf('/')))
                .toList();
    }

    /** How problems name a file or folder of the content. */
    String contentName(String name) {
        return content.nameOf(name);
    }

    /** An article. */
    Optional<SourceFile> article(String name) {
        return take(content, name);
    }

    /** A drawing. */
    Optional<SourceFile> drawing(String name) {
        return take(content, name);
    }

    /** Warns of files at the top of either folder that nobody asked for, mostly of a misspelt name; notes may be. */
    void warnOfStrays() {
        for (SourceTree tree : List.of(content, config)) {
            for (String name : tree.names(name -> name.indexOf('/') < 0 && !name.endsWith(".md"))) {
                tree.find(name).filter(file -> !used.contains(file)).filter(file -> !name.equals("stock.csv"))
                        .ifPresent(file -> problems.warning(file.at(1), "nothing reads this file",
                                "correct its name, or delete it"));
            }
        }
    }

    /** A short word that changes whenever the name or the text of a file does. */
    String version() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (SourceTree tree : List.of(content, config)) {
                tree.texts().forEach((name, text) -> update(digest, name, text));
            }
            if (otherStock) {
                stock.ifPresent(file -> update(digest, "another stock list", file.text()));
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static void update(MessageDigest digest, String name, String text) {
        digest.update(name.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }
}

package fencerow.content;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The files one reading starts from, and which of them were asked for. */
final class Sources {
    private static final Pattern WORDS = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*/[^/]+\\.yaml");
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
        return contentYaml(name, problems);
    }

    /** The same with its problems reported elsewhere. */
    Optional<YamlNode> contentYaml(String name, Problems found) {
        return yaml(content, name, found);
    }

    /** A file of the showroom's that need not be there. */
    Optional<YamlNode> configYamlIfThere(String name) {
        return config.find(name).isPresent() ? configYaml(name) : Optional.empty();
    }

    Optional<YamlNode> configYaml(String name) {
        return yaml(config, name, problems);
    }

    private Optional<YamlNode> yaml(SourceTree tree, String name, Problems found) {
        return take(tree, name).flatMap(file -> {
            int before = found.count();
            Optional<YamlNode> top = YamlFile.read(file, found);
            if (top.isEmpty() && found.count() == before) {
                found.error(file.at(1), "the file is empty", "write something in it, or delete it");
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

    /** Languages that have words, offered or not. */
    List<String> wordLanguages() {
        return content.names(name -> WORDS.matcher(name).matches()).stream()
                .map(name -> name.substring(0, name.indexOf('/')))
                .distinct()
                .toList();
    }

    /** What is kept of a language's translations, if anything is. */
    Optional<SourceFile> translated(String language) {
        return content.find(language + "/" + TranslatedFile.NAME);
    }

    /** Words of a language's texts that do not count as hard ones, if any are named. */
    Optional<SourceFile> tradeWords(String language) {
        return content.find(language + "/trade-words.txt");
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
        var fingerprint = new Fingerprint();
        for (SourceTree tree : List.of(content, config)) {
            tree.texts().forEach((name, text) -> fingerprint.add(name).add(text));
        }
        if (otherStock) {
            stock.ifPresent(file -> fingerprint.add("another stock list").add(file.text()));
        }
        return fingerprint.word();
    }
}

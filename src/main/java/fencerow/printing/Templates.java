package fencerow.printing;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * The owner's templates: one XHTML file for each sheet and paper, {@code page.html} around them all, {@code paper.css},
 * and whatever parts the owner splits off. Values are escaped; a name that does not exist is an error.
 */
final class Templates {
    private static final String END = ".html";

    private final Path folder;
    private final String css;
    private final Map<String, Template> templates = new HashMap<>();

    private Templates(Path folder, String css) {
        this.folder = folder;
        this.css = css;
    }

    /**
     * Reads and compiles all of them.
     *
     * @throws UncheckedIOException     if a file is missing or unreadable
     * @throws IllegalArgumentException if a template is broken
     */
    static Templates read(Path folder) {
        var templates = new Templates(folder, text(folder.resolve("paper.css")));
        Mustache.Compiler compiler = Mustache.compiler()
                .strictSections(true)
                .emptyStringIsFalse(true)
                .withLoader(name -> new StringReader(text(folder.resolve(name + END))));
        templates.compile("page", compiler);
        for (Sheet sheet : Sheet.values()) {
            templates.compile(sheet.id(), compiler);
        }
        for (String paper : WorkingPaper.TEMPLATES) {
            templates.compile(paper, compiler);
        }
        return templates;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read; every page needs it", e);
        }
    }

    private void compile(String name, Mustache.Compiler compiler) {
        try {
            templates.put(name, compiler.compile(text(file(name))));
        } catch (MustacheException e) {
            throw broken(name, e);
        }
    }

    private Path file(String name) {
        return folder.resolve(name + END);
    }

    private IllegalArgumentException broken(String name, MustacheException e) {
        String cause = e.getCause() == null ? "" : ": " + e.getCause().getMessage();
        return new IllegalArgumentException(
                file(name) + ": " + e.getMessage() + cause + "; mend the template, or take the shipped one again", e);
    }

    /** The style sheet. */
    String css() {
        return css;
    }

    /**
     * A template filled in.
     *
     * @throws IllegalArgumentException if it asks for something that does not exist
     */
    String fill(String name, Map<String, Object> values) {
        Template template = templates.get(name);
        if (template == null) {
            throw new IllegalArgumentException("there is no template [" + name + "]");
        }
        try {
            return template.execute(values);
        } catch (MustacheException e) {
            throw broken(name, e);
        }
    }
}

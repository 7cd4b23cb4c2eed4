package fencerow.backoffice;

import fencerow.backoffice.document.AcceptedDocument;
import fencerow.content.Translations;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes down that translations translate the present words. */
@Command(name = "accept", mixinStandardHelpOptions = true,
        description = "Says that translations are right as they stand: writes down which English each translates.",
        footer = {"", "Example: fencerow translations accept es feature.quick-attach explainers/quick-attach"})
final class AcceptCommand implements Callable<Integer> {
    private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*");

    private final FencerowCommand top;

    @Parameters(index = "0", paramLabel = "TAG", description = "Language of the translations, such as es.")
    private String language = "";

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "KEY",
            description = "Which: a key, the first parts of one, or explainers/TOPIC. Default: all.")
    private List<String> keys = List.of();

    AcceptCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException, FailedException {
        if (!LANGUAGE.matcher(language).matches() || language.equals(Translations.ORIGINAL)) {
            throw new WrongUseException("[" + language + "] is no language to translate into; use one such as es");
        }
        try {
            var translations = new Translations(top.folders().content());
            var document = new AcceptedDocument(
                    language, UnreadableException.orGood(translations.accept(language, keys)));
            top.print(document, () -> "Accepted " + document.accepted()
                    + (document.accepted() == 1 ? " translation.\n" : " translations.\n"));
            return FencerowCommand.FINE;
        } catch (IOException e) {
            throw new FailedException("what is accepted cannot be written below " + top.folders().content()
                    + "; check that this user may write there");
        }
    }
}

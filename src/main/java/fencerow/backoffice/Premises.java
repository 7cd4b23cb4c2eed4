package fencerow.backoffice;

import fencerow.content.Content;
import fencerow.explainers.Library;
import fencerow.stock.Unit;
import fencerow.visit.Showroom;
import fencerow.wording.Phrases;
import fencerow.wording.PseudoLocale;
import fencerow.wording.Quantities;
import fencerow.wording.Texts;
import java.util.List;

/**
 * What a command works on: content and configuration that were read without a problem, in one language.
 *
 * @param content  all of it
 * @param language the command speaks
 */
record Premises(Content content, String language) {
    /**
     * Reads the folders.
     *
     * @throws UnreadableException if anything is wrong in them
     * @throws WrongUseException   if the language asked for is not offered
     */
    static Premises read(ContentSource reader, Folders folders) throws UnreadableException, WrongUseException {
        Content content = UnreadableException.orGood(
                reader.read(folders.content(), folders.config(), folders.stock()));
        String language = folders.language().orElse(content.settings().languages().get(0));
        if (language.equals(PseudoLocale.LANGUAGE)) {
            content = content.withPseudoLocale();
        }
        if (!content.texts().containsKey(language)) {
            throw new WrongUseException("language [" + language + "] is not offered; use one of "
                    + String.join(", ", content.settings().languages()) + ", or add it to "
                    + folders.config().resolve("showroom.yaml") + " and to " + folders.content());
        }
        return new Premises(content, language);
    }

    /** The same with other units. */
    Premises with(List<Unit> units) {
        return new Premises(content.with(content.showroom().with(units)), language);
    }

    Showroom showroom() {
        return content.showroom();
    }

    Texts texts() {
        return content.getTexts(language);
    }

    Library library() {
        return content.getLibrary(language);
    }

    Quantities quantities() {
        return new Quantities(texts().locale(), content.settings().metric());
    }

    Phrases phrases() {
        return new Phrases(texts(), quantities()::show);
    }
}

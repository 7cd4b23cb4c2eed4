package fencerow.wording;

/**
 * How easy a text is to read, by what can be counted in it. A measure of texts, not of readers: short words and
 * sentences help, and a text can still be obscure. Of little use below some 100 words.
 *
 * @param sentences in the text, at least 1
 * @param words     in it, at least 1
 * @param weighed   those of the words whose syllables count; trade words and figures do not
 * @param syllables of the words weighed
 */
public record Readability(int sentences, int words, int weighed, int syllables) {
    /** @throws IllegalArgumentException if a count is out of its range */
    public Readability {
        if (sentences < 1 || words < 1 || weighed < 1 || weighed > words || syllables < weighed) {
            throw new IllegalArgumentException("no text has " + sentences + " sentences, " + words + " words, "
                    + weighed + " of them weighed, and " + syllables + " syllables; count a text with words in it");
        }
    }

    /** Mean words of a sentence. */
    public double meanSentence() {
        return (double) words / sentences;
    }

    private double meanWord() {
        return (double) syllables / weighed;
    }

    /**
     * The US school grade a reader needs for an English text: 0.39 W/S + 11.8 Y/W - 15.59. (J. P. Kincaid, R. P.
     * Fishburne, R. L. Rogers, B. S. Chissom: Derivation of new readability formulas for Navy enlisted personnel,
     * 1975.)
     */
    public double fleschKincaidGrade() {
        return 0.39 * meanSentence() + 11.8 * meanWord() - 15.59;
    }

    /**
     * How easy an English text is, some 0 to 100: 206.835 - 1.015 W/S - 84.6 Y/W. (R. Flesch, A new readability
     * yardstick, Journal of Applied Psychology 32, 1948.)
     */
    public double fleschEase() {
        return 206.835 - 1.015 * meanSentence() - 84.6 * meanWord();
    }

    /**
     * How easy a Spanish text is: 206.835 - 62.3 Y/W - W/S; 55 to 65 is normal, above that easy. (F. Szigriszt Pazos,
     * Sistemas predictivos de legibilidad del mensaje escrito, 1993; bands: INFLESZ scale.)
     */
    public double szigriszt() {
        return 206.835 - 62.3 * meanWord() - meanSentence();
    }

    /** Both texts as one. */
    public Readability plus(Readability other) {
        return new Readability(sentences + other.sentences, words + other.words, weighed + other.weighed,
                syllables + other.syllables);
    }
}

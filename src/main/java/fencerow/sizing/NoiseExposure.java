package fencerow.sizing;

import fencerow.terms.Time;

/**
 * How long ears stand a noise in a day.
 *
 * <p>Formula: {@code T = 8 h / 2^((L - limit) / exchange)} with level L in dB(A).
 *
 * <p>Source: {@link Source#HEARING_LIMITS}. Valid from 80 to 130 dB(A), steady; nothing above 140 dB even for a moment.
 * The work-safety limit has long been held not to cover farms, and ears are harmed all the same. Caution:
 * {@link Caution#HEARING}.
 */
public enum NoiseExposure {
    /** The legal limit of work safety: 90 dB(A), halved every 5 dB. */
    OSHA("osha", 90, 5),
    /** The advised limit: 85 dB(A), halved every 3 dB. */
    NIOSH("niosh", 85, 3);

    private final String id;
    private final double limit;
    private final double exchange;

    NoiseExposure(String id, double limit, double exchange) {
        this.id = id;
        this.limit = limit;
        this.exchange = exchange;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /**
     * Time allowed in a day.
     *
     * @param level 80 to 130 dB(A)
     * @throws IllegalArgumentException outside
     */
    public Time allowed(double level) {
        if (!(level >= 80 && level <= 130)) {
            throw new IllegalArgumentException(
                    "noise " + level + " dB(A) is outside the valid range; give 80 to 130 dB(A)");
        }
        return Time.ofHours(8 / Math.pow(2, (level - limit) / exchange));
    }
}

package fencerow.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the showroom sets.
 *
 * @param name       of the showroom, as shown and printed
 * @param languages  offered, as BCP 47 tags; the first is the one a visit starts in
 * @param metric     whether a visit starts in metric units rather than US customary
 * @param idle       when a visit nobody touches any more ends
 * @param panel      the screen's size
 * @param paper      how and where lists are printed
 * @param pin        opens the staff area; hashed, or plain in a demo
 * @param comeBackDays how many days a code brings a visit's answers back; empty where no codes are given
 */
public record Settings(
        String name,
        List<String> languages,
        boolean metric,
        Idle idle,
        Panel panel,
        PaperSettings paper,
        Pin pin,
        OptionalInt comeBackDays) {
    /** @throws IllegalArgumentException if no language is offered */
    public Settings {
        languages = List.copyOf(languages);
        if (languages.isEmpty()) {
            throw new IllegalArgumentException("no language is offered; list at least one");
        }
    }

    /** Whether this is the demo showroom: only its PIN stands in plain digits. */
    public boolean isDemo() {
        return Pin.DIGITS.matcher(pin.setting()).matches();
    }

    /**
     * The same with visits starting in another of the languages.
     *
     * @throws IllegalArgumentException if the language is not offered
     */
    public Settings startingIn(String language) {
        List<String> order = new ArrayList<>(languages);
        if (!order.remove(language)) {
            throw new IllegalArgumentException(
                    "language [" + language + "] is not offered; use one of " + String.join(", ", languages));
        }
        order.add(0, language);
        return new Settings(name, order, metric, idle, panel, paper, pin, comeBackDays);
    }

    /**
     * The two waits before a visit ends by itself.
     *
     * @param warnAfter  the last touch on a short screen; long texts get more
     * @param resetAfter the warning; at least 20 seconds
     * @param signOut    the last touch behind the staff door, which is then locked; the warning comes before
     */
    public record Idle(Duration warnAfter, Duration resetAfter, Duration signOut) {
        /** Where nothing is said of staff, who are busy with a customer now and then: two minutes more. */
        private static final Duration USUAL_SIGN_OUT = Duration.ofMinutes(2);

        /** With the usual wait before staff are signed out: two minutes and the warning. */
        public Idle(Duration warnAfter, Duration resetAfter) {
            this(warnAfter, resetAfter, USUAL_SIGN_OUT.plus(resetAfter));
        }

        /**
         * @throws IllegalArgumentException if the warning is shorter than 20 seconds, the first wait than 10, or the
         *                                  wait before signing out is not at least 10 seconds longer than the warning
         */
        public Idle {
            if (signOut.minus(resetAfter).toSeconds() < 10) {
                throw new IllegalArgumentException("sign-out after " + signOut.toSeconds()
                        + " s is too short; give at least 10 s more than reset-after");
            }
            if (resetAfter.toSeconds() < 20 || warnAfter.toSeconds() < 10) {
                throw new IllegalArgumentException("idle times " + warnAfter.toSeconds() + " s and "
                        + resetAfter.toSeconds() + " s are too short; warn after at least 10 s, wait at least 20 s");
            }
        }
    }

    /**
     * The screen.
     *
     * @param diagonalMetres of the panel; sizes of targets and type follow from it
     * @param doubleTouch    how soon after a touch another one at the same spot counts as the same
     */
    public record Panel(double diagonalMetres, Duration doubleTouch) {
        private static final Duration LONGEST = Duration.ofSeconds(1);

        /** @throws IllegalArgumentException unless between 0.2 and 3 metres, and 0 and 1 second */
        public Panel {
            if (doubleTouch.isNegative() || doubleTouch.compareTo(LONGEST) > 0) {
                throw new IllegalArgumentException(
                        "double-touch of " + doubleTouch.toMillis() + " ms is out of range; give 0 s to 1 s");
            }
            if (!(diagonalMetres >= 0.2 && diagonalMetres <= 3)) {
                throw new IllegalArgumentException(
                        "panel diagonal " + diagonalMetres + " m is out of range; give 8 in to 118 in");
            }
        }
    }

    /**
     * Printing.
     *
     * @param printer    an {@code ipp://} address or a print queue's name; empty to save files instead
     * @param saveFolder where lists are saved when there is no printer
     * @param letter     US Letter, else A4
     * @param pageOne    lines on page one
     * @param signs      walk-away signs in its box
     * @param perVisit   the most printouts in one visit, at least 1
     * @param perHour    the most printouts in any hour, at least 1
     */
    public record PaperSettings(
            Optional<String> printer,
            String saveFolder,
            boolean letter,
            int pageOne,
            int signs,
            int perVisit,
            int perHour) {}
}

package fencerow.kiosk.frame;

import java.io.IOException;

/** Says words aloud. Called in the background; whoever calls is interrupted when the words are not wanted any more. */
public interface Speaker {
    /** Where there is none. */
    Speaker NONE = new Speaker() {
        @Override
        public boolean isThere() {
            return false;
        }

        @Override
        public void say(String language, String words, Loudness loudness) throws IOException {
            throw new IOException("there is no speech engine");
        }
    };

    /** Whether it can speak here. */
    boolean isThere();

    /**
     * Says the words; returns when they have been said.
     *
     * @param language of the words, as a BCP 47 tag
     * @throws IOException          if they could not be said
     * @throws InterruptedException if they are not wanted any more; nothing is heard from then on
     */
    void say(String language, String words, Loudness loudness) throws IOException, InterruptedException;

    /** How loud, in steps; what decibels that makes is up to the amplifier. */
    enum Loudness {
        SOFTEST(1),
        SOFT(2),
        NORMAL(3),
        LOUD(4),
        LOUDEST(5);

        private final int step;

        Loudness(int step) {
            this.step = step;
        }

        /** Which step it is, from 1. */
        public int step() {
            return step;
        }

        /** So many steps louder or, if negative, softer; as far as it goes. */
        Loudness louder(int steps) {
            return values()[Math.max(1, Math.min(values().length, step + steps)) - 1];
        }
    }
}

package fencerow.kiosk.office;

import fencerow.kiosk.kit.Icon;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What staff see first.
 *
 * @param version of the content shown
 * @param signOut when they are signed out, in words
 * @param tiles   in this order, each with a line that says what is behind it
 * @param notice  what came of the last thing done; empty at first
 */
record OfficeModel(String version, String signOut, Map<Tile, String> tiles, Optional<String> notice) {
    /** The tiles, in the order shown. */
    enum Tile {
        UNITS("units", Icon.LIST),
        CHANGES("changes", Icon.UNDO),
        REPORT("report", Icon.LOOK),
        PROBLEMS("problems", Icon.CAUTION),
        PRINTER("printer", Icon.PRINT),
        VOLUME("volume", Icon.SPEAK),
        RESTART("restart", Icon.START_OVER),
        CLOSE("close", Icon.CLOSE),
        SIGN_OUT("sign-out", Icon.STAFF);

        private final String id;
        private final Icon icon;

        Tile(String id, Icon icon) {
            this.id = id;
            this.icon = icon;
        }

        /** The word used in text keys. */
        String id() {
            return id;
        }

        Icon icon() {
            return icon;
        }
    }

    /**
     * Something wrong with the content.
     *
     * @param where  file and line; blank where it is no file's
     * @param what   is wrong
     * @param whatToDo to put it right; blank where nobody knows
     */
    record ProblemLine(String where, String what, String whatToDo) {}

    /** Problems, or none. */
    record Problems(List<ProblemLine> lines) {
        /** Copies the list. */
        Problems {
            lines = List.copyOf(lines);
        }
    }
}

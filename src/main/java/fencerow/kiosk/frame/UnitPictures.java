package fencerow.kiosk.frame;

import fencerow.terms.UnitId;
import java.util.List;
import java.util.Optional;

/** Photographs of units, which the showroom keeps as files. Called in the background; for any thread. */
public interface UnitPictures {
    /** No photographs. */
    UnitPictures NONE = new UnitPictures() {
        @Override
        public List<String> names() {
            return List.of();
        }

        @Override
        public boolean has(UnitId unit) {
            return false;
        }

        @Override
        public Optional<byte[]> find(UnitId unit) {
            return Optional.empty();
        }

        @Override
        public Optional<String> findFault(String name) {
            return Optional.of("missing");
        }
    };

    /** Names of the files that are there, by which a unit's can be chosen. */
    List<String> names();

    /** Whether a photograph was chosen for the unit; its file may still be missing or damaged. Answers at once. */
    boolean has(UnitId unit);

    /** The unit's photograph as its file has it, a PNG or JPEG; empty where there is none that can be shown. */
    Optional<byte[]> find(UnitId unit);

    /** Why the file of the name cannot be shown, as a word of text keys; empty where it can. */
    Optional<String> findFault(String name);
}

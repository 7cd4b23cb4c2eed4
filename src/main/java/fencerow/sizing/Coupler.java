package fencerow.sizing;

import fencerow.terms.Force;
import fencerow.terms.Pressure;
import fencerow.terms.Spread;
import java.util.Optional;

/**
 * Hydraulic couplers: the female half sits on the tractor, the male on the tool, and both must be of one kind. Source:
 * {@link Source#COUPLER_STANDARDS}. Caution: {@link Caution#RELIEVE_PRESSURE}.
 */
public enum Coupler {
    /** Farm poppet of half-inch size; its male valve opens with at most 45 N. Builds on series A. */
    ISO_5675("iso-5675", true, true),
    /** Preferred on farms and in forests world-wide. */
    ISO_7241_A("iso-7241-a", true, true),
    /** Industry in North America. */
    ISO_7241_B("iso-7241-b", false, true),
    /** Flat face, 20 to 31.5 MPa; never connected under pressure. */
    ISO_16028("iso-16028", false, false);

    /** Most that the male valve of a farm poppet may ask for. */
    public static final Force FARM_VALVE_OPENING = Force.ofNewtons(45);

    private final String id;
    private final boolean farm;
    private final boolean poppet;

    Coupler(String id, boolean farm, boolean poppet) {
        this.id = id;
        this.farm = farm;
        this.poppet = poppet;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Whether it is usual on farm tractors. */
    public boolean isFarm() {
        return farm;
    }

    /** Whether halves of the two kinds go together. */
    public boolean fits(Coupler other) {
        return this == other || farm && other.farm;
    }

    /** Working pressures, where the standard names them. */
    public Optional<Spread<Pressure>> pressure() {
        return poppet
                ? Optional.empty()
                : Optional.of(Spread.of(Pressure.ofBar(200), Pressure.ofBar(315)));
    }
}

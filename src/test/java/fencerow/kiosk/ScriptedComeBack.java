package fencerow.kiosk;

import fencerow.desk.ComeBackCode;
import fencerow.kiosk.frame.ComeBack;
import fencerow.visit.Remembered;
import fencerow.visit.ReturnCode;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.time.LocalDate;
import java.util.Optional;

/** Gives everybody the same code, and under it a visit with answers of which some are no longer asked. */
public final class ScriptedComeBack implements ComeBack {
    /** As it is typed. */
    public static final String CODE = "K7QM3F9TXW2Y";

    @Override
    public int days() {
        return 60;
    }

    @Override
    public Optional<ReturnCode> keep(Visit visit) {
        return Optional.of(new ReturnCode(ComeBackCode.grouped(CODE), LocalDate.parse("2026-05-01")));
    }

    @Override
    public Found find(ComeBackCode code, Showroom showroom) {
        return new Found.Back(Remembered.read(
                Remembered.write(MatchPlaces.longDrive()) + "\nanswer no-longer-asked x\npin sold-last-week",
                showroom));
    }
}

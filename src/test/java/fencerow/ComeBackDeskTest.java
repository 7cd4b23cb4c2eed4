package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import fencerow.desk.ComeBackBook;
import fencerow.desk.ComeBackCode;
import fencerow.desk.StaffLock;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.frame.ComeBack;
import fencerow.storage.Store;
import fencerow.visit.ReturnCode;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever types wrong codes has to wait, and then a right one opens. */
class ComeBackDeskTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();

    @TempDir
    Path folder;

    private static Clock at(String instant) {
        return Clock.fixed(Instant.parse(instant), ZoneOffset.UTC);
    }

    private static ComeBackDesk desk(Store store, Clock clock) {
        var book = new ComeBackBook(store.comeBacks(), store.memory(), clock, new SecureRandom());
        return new ComeBackDesk(book, 60, new StaffLock(clock), clock);
    }

    @Test
    void afterThreeWrongCodesNoneIsTriedAndWhatIsTooOldIsNotFound() throws Exception {
        Clock march = at("2026-03-02T10:15:30Z");
        try (Store store = Store.open(folder, march)) {
            ComeBackDesk desk = desk(store, march);
            ReturnCode made = desk.keep(Visit.NEW).orElseThrow();
            ComeBackCode code = ComeBackCode.findTyped(made.code()).orElseThrow();
            for (int i = 0; i < 3; i++) {
                assertEquals(new ComeBack.Found.Nothing(),
                        desk.find(ComeBackCode.draw(new SecureRandom()), SHOWROOM));
            }
            assertEquals(new ComeBack.Found.Wait(Duration.ofSeconds(30)), desk.find(code, SHOWROOM));
            assertInstanceOf(ComeBack.Found.Back.class, desk(store, march).find(code, SHOWROOM));
            assertEquals(new ComeBack.Found.Nothing(), desk(store, at("2026-05-02T00:00:00Z")).find(code, SHOWROOM));
            assertEquals(0, store.comeBacks().forgetBefore(LocalDate.parse("2026-05-01")));
            assertEquals(1, store.comeBacks().forgetBefore(LocalDate.parse("2026-05-02")));
        }
    }
}

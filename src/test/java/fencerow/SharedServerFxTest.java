package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.HandClock;
import fencerow.kiosk.LiveKiosk;
import fencerow.kiosk.frame.Premises;
import fencerow.storage.Server;
import fencerow.storage.Store;
import fencerow.storage.TestServer;
import fencerow.visit.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server that kiosks share stops in a visit and comes back; two rows more for the table of {@link ChaosFxTest}. */
class SharedServerFxTest {
    @TempDir
    private Path folder;

    @Test
    void aServerThatStopsIsNeverSeenByTheShopperAndStaffAreToldUntilItIsBack() throws Exception {
        assumeTrue(Boolean.getBoolean(TestServer.ASKED_FOR), TestServer.HOW);
        try (TestServer postgres = TestServer.start(folder.resolve("server"))) {
            Server server = postgres.database();
            try (LiveKiosk kiosk = open(shared(server))) {
                Premises before = ChaosFxTest.nextVisit(kiosk);
                assertEquals(List.of(), before.problems());
                Visit visit = ChaosFxTest.startVisit(kiosk);

                kiosk.waitForOffer(() -> stop(postgres));
                assertEquals(visit, Fx.on(() -> kiosk.frame().visit().get()));
                Premises without = ChaosFxTest.nextVisit(kiosk);
                assertEquals(before.showroom().units(), without.showroom().units());
                assertTrue(without.problems().get(0).contains("the server does not answer"),
                        without.problems().toString());
                ChaosFxTest.row("database server stopped",
                        "nothing, the same units; staff read " + without.problems().get(0));

                kiosk.waitForOffer(() -> startAgain(postgres));
                Premises again = ChaosFxTest.nextVisit(kiosk);
                assertEquals(List.of(), again.problems());
                assertEquals(before.showroom().units(), again.showroom().units());
                ChaosFxTest.row("database server back", "nothing; staff are told no more, and can change units again");
            }
        }
    }

    @Test
    void aServerThatOnlyLetsReadIsNeverSeenByTheShopperAndStaffReadWhy() throws Exception {
        assumeTrue(Boolean.getBoolean(TestServer.ASKED_FOR), TestServer.HOW);
        try (TestServer postgres = TestServer.start(folder.resolve("server"))) {
            Server server = postgres.database();
            DemoShowroom demo = shared(server);
            try (LiveKiosk kiosk = open(demo)) {
                Premises before = ChaosFxTest.nextVisit(kiosk);
                String database = String.valueOf(server).replaceAll(".*/", "");
                postgres.onlyReads(database, true);
                Visit visit = ChaosFxTest.startVisit(kiosk);
                kiosk.waitForOffer(() -> demo.change("stock.csv", "17900", "17800"));
                assertEquals(visit, Fx.on(() -> kiosk.frame().visit().get()));
                Premises reading = ChaosFxTest.nextVisit(kiosk);
                if (reading.problems().toString().contains("does not answer")) {
                    // The server ended the sessions: one look finds it gone, the next one how it is.
                    kiosk.waitForOffer(() -> {});
                    reading = ChaosFxTest.nextVisit(kiosk);
                }
                assertEquals(before.showroom().units(), reading.showroom().units());
                assertTrue(reading.problems().get(0).contains("can only be read now"), reading.problems().toString());
                Premises shown = reading;
                Fx.on(() -> {
                    StaffDoor.tryAnotherPrice(shown, "The database can only be read.");
                    return true;
                });
                ChaosFxTest.row("database server only lets read", "nothing, the same units; staff read "
                        + reading.problems().get(0) + "; at a change \"The database can only be read.\"");
            }
        }
    }

    private DemoShowroom shared(Server server) throws Exception {
        Store.migrate(server, Optional.empty());
        DemoShowroom demo = DemoShowroom.in(folder);
        demo.change("showroom.yaml", "database: \"\"", "database: \"" + TestServer.url(server) + "\"");
        Path login = Files.createDirectories(demo.data()).resolve(Server.LOGIN_FILE);
        Files.writeString(login, "user=postgres\npassword=-\n");
        Files.setPosixFilePermissions(login, PosixFilePermissions.fromString("rw-------"));
        return demo;
    }

    private static LiveKiosk open(DemoShowroom demo) {
        return LiveKiosk.of(new KioskFiles(
                new KioskWiring(new HandClock(), "", config -> demo.data()), demo.folders()));
    }

    private static void stop(TestServer postgres) {
        try {
            postgres.kill();
        } catch (Exception e) {
            throw new AssertionError("the server cannot be stopped", e);
        }
    }

    private static void startAgain(TestServer postgres) {
        try {
            postgres.startAgain();
        } catch (Exception e) {
            throw new AssertionError("the server does not start again", e);
        }
    }
}

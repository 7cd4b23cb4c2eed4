package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.LiveKiosk;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.needs.Answer;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import fencerow.visit.ReturnCode;
import fencerow.visit.Visit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody takes a code along, and comes back with it another day: with the real database, across a restart. */
class ComeBackFxTest {
    private static final QuestionId JOBS = new QuestionId("jobs");
    private static final Answer SNOW = new Answer.Chosen(List.of(new OptionId("clear-snow")));
    private static final UnitId PINNED = new UnitId("n-203");

    @TempDir
    private Path folder;

    private LiveKiosk kioskOn(DemoShowroom demo, String instant) {
        var clock = Clock.fixed(Instant.parse(instant), ZoneOffset.UTC);
        var wiring = new KioskWiring(clock, "", config -> demo.data());
        return LiveKiosk.of(new KioskFiles(wiring, demo.folders()));
    }

    private static void show(LiveKiosk kiosk, Place place) {
        Fx.on(() -> {
            kiosk.frame().go(new Place.Home());
            kiosk.frame().go(place);
            return true;
        });
    }

    private static void touch(LiveKiosk kiosk, String key) {
        Fx.on(() -> {
            kiosk.shown().layOut();
            kiosk.shown().touch(kiosk.frame().say(key));
            return true;
        });
    }

    private static void type(LiveKiosk kiosk, String code) {
        show(kiosk, Place.EnterCode.EMPTY);
        Fx.on(() -> {
            kiosk.shown().layOut();
            code.replace("-", "").codePoints().mapToObj(Character::toString).forEach(kiosk.shown()::touch);
            return true;
        });
        touch(kiosk, "code.look");
    }

    /** On JavaFX's thread. */
    private static boolean says(LiveKiosk kiosk, String words) {
        return kiosk.window().stage().getScene().getRoot().lookupAll(".label").stream()
                .anyMatch(label -> label.toString().contains(words));
    }

    @Test
    void aCodeBringsTheVisitBackAfterARestartAndNothingElseDoes() throws IOException {
        DemoShowroom demo = DemoShowroom.in(folder);
        demo.change("showroom.yaml", "come-back: {codes: off, days: 60}", "come-back: {codes: on, days: 60}");
        ReturnCode code;
        Visit told;
        try (LiveKiosk kiosk = kioskOn(demo, "2026-03-02T10:15:30Z")) {
            Fx.on(() -> {
                Frame frame = kiosk.frame();
                frame.go(new Place.Home());
                frame.change(visit -> visit.answered(JOBS, SNOW).togglePin(PINNED));
                frame.go(new Place.Print());
                return true;
            });
            touch(kiosk, "print.code.make");
            kiosk.waitFor(() -> kiosk.frame().visit().get().code().isPresent(), "a code");
            told = Fx.on(() -> kiosk.frame().visit().get());
            code = told.code().orElseThrow();
            Fx.on(() -> {
                kiosk.frame().startOver(new Place.Attract());
                return true;
            });
        }
        assertNothingLiesOpen(demo.data(), code);

        try (LiveKiosk kiosk = kioskOn(demo, "2026-05-01T09:00:00Z")) {
            type(kiosk, code.code());
            kiosk.waitFor(() -> !kiosk.frame().visit().get().answers().byQuestion().isEmpty(), "the answers");
            Visit back = Fx.on(() -> kiosk.frame().visit().get());
            assertEquals(told.answers(), back.answers());
            assertEquals(told.pinned(), back.pinned());
        }

        try (LiveKiosk kiosk = kioskOn(demo, "2026-05-02T09:00:00Z")) {
            type(kiosk, code.code());
            kiosk.waitFor(() -> says(kiosk, "There is nothing under this code."), "an answer");
            assertEquals(Visit.NEW, Fx.on(() -> kiosk.frame().visit().get()), "60 days are over");
        }
    }

    @Test
    void whereCodesAreOffNothingOffersOne() {
        try (LiveKiosk kiosk = kioskOn(DemoShowroom.in(folder), "2026-03-02T10:15:30Z")) {
            show(kiosk, new Place.Print());
            assertFalse(Fx.on(() -> says(kiosk, kiosk.frame().say("print.code.heading"))));
            show(kiosk, new Place.Home());
            assertFalse(Fx.on(() -> says(kiosk, kiosk.frame().say("home.have-code"))));
        }
    }

    private static void assertNothingLiesOpen(Path data, ReturnCode code) throws IOException {
        List<String> secrets = List.of(
                "clear-snow", "answer jobs", code.code(), code.code().replace("-", ""));
        int looked = 0;
        try (Stream<Path> files = Files.walk(data)) {
            for (Path file : files.filter(Files::isRegularFile)
                    .filter(each -> !each.startsWith(data.resolve("last-good"))).toList()) {
                String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
                looked++;
                for (String secret : secrets) {
                    assertFalse(bytes.contains(secret), () -> file.getFileName() + " tells [" + secret + "]");
                }
            }
        }
        assertTrue(looked > 0, "no database was found");
    }
}

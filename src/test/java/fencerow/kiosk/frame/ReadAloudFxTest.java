package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Speaker.Loudness;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;

/** What is read aloud, to whom, and what stops it. The voice is a scripted one that writes down what it says. */
class ReadAloudFxTest {
    private record Said(String language, String words, Loudness loudness) {}

    private final List<Said> said = new ArrayList<>();
    private final Speaker voice = new Speaker() {
        @Override
        public boolean isThere() {
            return true;
        }

        @Override
        public void say(String language, String words, Loudness loudness) {
            said.add(new Said(language, words, loudness));
        }
    };

    private static void with(Speaker speaker, Executor workers, Consumer<Shown> test) {
        Fx.on(() -> {
            BackRoom room = new BackRoom(workers, Runnable::run);
            Shown shown = Shown.of(Rooms.premises(), 1920, 1080, room, speaker);
            shown.frame().go(new Place.Home());
            shown.layOut();
            test.accept(shown);
            shown.frame().leave();
            return true;
        });
    }

    private List<String> words() {
        return said.stream().map(Said::words).toList();
    }

    private void turnOn(Shown shown) {
        shown.touch("Read aloud");
        shown.touch("Read to me");
    }

    @Test
    void nobodyIsReadToWhoDidNotAsk() {
        with(voice, Runnable::run, shown -> {
            shown.frame().go(Place.Topics.FIRST);
            assertEquals(List.of(), said);
        });
    }

    @Test
    void everythingOnAScreenIsReadFromTheHeadingOn() {
        with(voice, Runnable::run, shown -> {
            turnOn(shown);
            for (Place place : List.of(Place.Questions.NEXT, Place.Topics.FIRST, Place.Quiz.NEXT, Place.Results.TOP)) {
                said.clear();
                shown.frame().go(place);
                shown.layOut();
                String all = String.join("\n", words());
                Node room = shown.scene().getRoot().lookup(".screen");
                for (String each : labels(room, new ArrayList<>())) {
                    assertTrue(all.contains(each), () -> place.key() + ": [" + each + "] is not read, only\n" + all);
                }
            }
        });
    }

    private static List<String> labels(Node node, List<String> all) {
        if (node instanceof Label label && label.getText().codePoints().anyMatch(Character::isLetter)) {
            all.add(label.getText());
        } else if (node instanceof Parent parent && node.isVisible()) {
            parent.getChildrenUnmodifiable().forEach(child -> labels(child, all));
        }
        return all;
    }

    @Test
    void choicesAreReadWithTheirPlaceAmongThemInTheScreensLanguage() {
        with(voice, Runnable::run, shown -> {
            turnOn(shown);
            shown.frame().go(Place.Questions.NEXT);
            long count = words().stream().filter(each -> each.matches("\\d+ of \\d+: .*")).count();
            assertTrue(count > 3, () -> "choices in " + words());
            assertTrue(words().stream().anyMatch(each -> each.startsWith("1 of " + count + ": ")), words()::toString);

            said.clear();
            shown.frame().change(shown.frame().comfort().withLanguage(Rooms.PSEUDO));
            assertTrue(!said.isEmpty() && said.stream().allMatch(each -> each.language().equals(Rooms.PSEUDO)));
        });
    }

    @Test
    void whatIsShownNextCutsItShortAndAPauseGoesOnWhereItWas() {
        Deque<Runnable> workers = new ArrayDeque<>();
        with(voice, workers::add, shown -> {
            turnOn(shown);
            say(workers, 2);
            List<String> begun = words();
            shown.touch("Read aloud");
            say(workers, 3);
            assertEquals(begun, words(), "paused");
            shown.touch("Go on");
            say(workers, 1);
            assertEquals(3, said.size());
            shown.touch("Read aloud");
            shown.touch("Say it again");
            say(workers, 1);
            assertEquals(said.get(0), said.get(3));

            said.clear();
            shown.frame().go(Place.Topics.FIRST);
            say(workers, 1);
            assertEquals(List.of(shown.frame().say("topics.title")), words());
        });
    }

    /** Lets the worker do so many pieces of work that were not dropped. */
    private void say(Deque<Runnable> workers, int lines) {
        int goal = said.size() + lines;
        while (said.size() < goal && !workers.isEmpty()) {
            workers.remove().run();
        }
    }

    @Test
    void loudnessGoesByStepsAndWithTheVisit() {
        with(voice, Runnable::run, shown -> {
            turnOn(shown);
            shown.touch("Read aloud");
            for (int i = 0; i < 9; i++) {
                shown.touch("Louder");
            }
            assertEquals(Loudness.LOUDEST, said.get(said.size() - 1).loudness());
            shown.frame().startOver(new Place.Home());
            said.clear();
            shown.frame().go(Place.Topics.FIRST);
            assertEquals(List.of(), said, "off for the next shopper");
            turnOn(shown);
            assertEquals(Loudness.NORMAL, said.get(0).loudness());
        });
    }

    @Test
    void theQuestionWhetherAnyoneIsHereIsHeardToo() {
        with(voice, Runnable::run, shown -> {
            shown.frame().go(Place.Topics.FIRST);
            shown.clock().pass(Duration.ofSeconds(80));
            shown.frame().tick();
            shown.frame().tick();
            assertEquals(1, said.size());
            assertTrue(words().get(0).startsWith("Are you still here?"));
        });
    }

    @Test
    void withoutAVoiceOrWithABrokenOneTheKioskSaysSoAndGoesOn() {
        Speaker broken = new Speaker() {
            @Override
            public boolean isThere() {
                return true;
            }

            @Override
            public void say(String language, String words, Loudness loudness) throws IOException {
                throw new IOException("no sound card");
            }
        };
        for (Speaker speaker : List.of(Speaker.NONE, broken)) {
            with(speaker, Runnable::run, shown -> {
                if (speaker.isThere()) {
                    turnOn(shown);
                }
                shown.touch("Read aloud");
                assertTrue(labels(shown.scene().getRoot(), new ArrayList<>())
                        .contains(shown.frame().say("aloud.missing")));
                shown.touch("Close");
                shown.frame().go(Place.Topics.FIRST);
            });
        }
    }
}

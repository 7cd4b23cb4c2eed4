package fencerow.kiosk.code;

import fencerow.desk.ComeBackCode;
import fencerow.visit.Remembered;
import fencerow.wording.Texts;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes a code of what is typed, and words of what came of it. */
final class CodeInteractor {
    private final Texts texts;
    private final int days;

    /** @param days how long a code works */
    CodeInteractor(Texts texts, int days) {
        this.texts = texts;
        this.days = days;
    }

    /** With one character more, or several; what no code has, and what is too much, is left out. */
    String typed(String before, String more) {
        String all = ComeBackCode.symbols(before + more);
        return all.substring(0, Math.min(all.length(), ComeBackCode.LENGTH));
    }

    /** Without the last character. */
    String backspace(String before) {
        return before.isEmpty() ? before : before.substring(0, before.length() - 1);
    }

    /** Why this is no code. */
    String mistyped(String typed) {
        int left = ComeBackCode.LENGTH - typed.length();
        return left > 0 ? say("short", Map.of("count", left)) : say("mistyped", Map.of());
    }

    String looking() {
        return say("looking", Map.of());
    }

    String nothing() {
        return say("nothing", Map.of("days", days));
    }

    String wait(Duration left) {
        return say("wait", Map.of("seconds", left.toSeconds() + 1));
    }

    String broken() {
        return say("broken", Map.of());
    }

    List<String> back(Remembered remembered) {
        List<String> lines = new ArrayList<>();
        if (remembered.lostAnswers() > 0) {
            lines.add(say("lost-answers", Map.of("count", remembered.lostAnswers())));
        }
        if (remembered.lostUnits() > 0) {
            lines.add(say("lost-units", Map.of("count", remembered.lostUnits())));
        }
        lines.add(say("as-of-today", Map.of()));
        return lines;
    }

    private String say(String key, Map<String, ?> words) {
        return texts.get("kiosk.code." + key, words);
    }
}

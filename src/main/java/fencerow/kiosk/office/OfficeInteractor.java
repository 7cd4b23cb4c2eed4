package fencerow.kiosk.office;

import fencerow.kiosk.frame.ListPrinter.Printed;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.office.OfficeModel.ProblemLine;
import fencerow.kiosk.office.OfficeModel.Tile;
import fencerow.printing.PrintOutcome;
import fencerow.wording.Texts;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Knows what staff can do here. */
final class OfficeInteractor {
    private static final Pattern PROBLEM =
            Pattern.compile("(?:([^\\s:]+:\\d+|[^:;]{1,60}): )?(.*?)(?:; ([^;]*))?", Pattern.DOTALL);

    private final Premises premises;
    private final Texts texts;

    OfficeInteractor(Premises premises, Texts texts) {
        this.premises = premises;
        this.texts = texts;
    }

    OfficeModel model(Optional<String> notice) {
        Map<Tile, String> tiles = new EnumMap<>(Tile.class);
        for (Tile tile : Tile.values()) {
            tiles.put(tile, hint(tile));
        }
        long seconds = premises.settings().idle().signOut().toSeconds();
        return new OfficeModel(say("version", Map.of("version", premises.contentVersion())),
                say("signs-out", Map.of("minutes", seconds / 60, "seconds", seconds % 60)), tiles, notice);
    }

    private String hint(Tile tile) {
        return switch (tile) {
            case UNITS -> premises.desk().isPresent()
                    ? say("tile.units.hint", Map.of("count", premises.showroom().units().size()))
                    : say("no-desk", Map.of());
            case PROBLEMS -> say("tile.problems.hint", Map.of("count", premises.problems().size()));
            default -> say("tile." + tile.id() + ".hint", Map.of());
        };
    }

    /** What is wrong with the content. */
    OfficeModel.Problems problems() {
        return new OfficeModel.Problems(premises.problems().stream().map(OfficeInteractor::line).toList());
    }

    /** Where, what and what to do, as far as a message has these parts. */
    static ProblemLine line(String message) {
        Matcher parts = PROBLEM.matcher(message);
        if (!parts.matches()) {
            return new ProblemLine("", message, "");
        }
        return new ProblemLine(part(parts, 1), part(parts, 2), part(parts, 3));
    }

    private static String part(Matcher parts, int group) {
        String part = parts.group(group);
        return part == null ? "" : part;
    }

    /** How printing went. */
    String printed(Printed printed) {
        PrintOutcome outcome = printed.outcome();
        if (outcome instanceof PrintOutcome.Saved saved) {
            return say("saved", Map.of("name", String.valueOf(saved.file().getFileName())));
        }
        return List.of(outcome.says(texts), outcome.todo(texts)).stream()
                .filter(words -> !words.isBlank())
                .reduce((first, second) -> first + " " + second)
                .orElse("");
    }

    String broken() {
        return say("broken", Map.of());
    }

    String printing() {
        return say("printing", Map.of());
    }

    String noDesk() {
        return say("no-desk", Map.of());
    }

    private String say(String key, Map<String, ?> arguments) {
        return texts.get("kiosk.office." + key, arguments);
    }
}

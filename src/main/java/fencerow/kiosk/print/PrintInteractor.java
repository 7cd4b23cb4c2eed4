package fencerow.kiosk.print;

import fencerow.checklist.ChecklistLine;
import fencerow.kiosk.frame.ListPrinter.Part;
import fencerow.kiosk.frame.ListPrinter.Printed;
import fencerow.kiosk.frame.Outlook;
import fencerow.printing.PrintOutcome;
import fencerow.printing.PrinterTrouble;
import fencerow.quiz.Outcome;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Labels;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts the states of printing into words. */
final class PrintInteractor {
    private final Showroom showroom;
    private final Texts texts;
    private final boolean saves;

    /** @param saves whether there is no printer, so that pages are saved */
    PrintInteractor(Showroom showroom, Texts texts, boolean saves) {
        this.showroom = showroom;
        this.texts = texts;
        this.saves = saves;
    }

    /** What page one will hold. */
    List<String> lines(Outlook outlook) {
        Labels labels = new Labels(texts);
        return showroom.checklist(outlook.visit(), outlook.stakes()).stream()
                .filter(line -> line.place() == ChecklistLine.Place.PAGE_ONE)
                .map(labels::lineWhat)
                .toList();
    }

    /** What may be had beside the list: the explanations only by who had something wrong. */
    PrintModel.Ready ready(Visit visit, Set<Part> extras, List<String> lines, Optional<PrinterTrouble> trouble) {
        List<PrintModel.Extra> more = new ArrayList<>();
        for (Part part : EnumSet.complementOf(EnumSet.of(Part.LIST))) {
            if (part != Part.EXPLANATIONS || hasMistakes(visit)) {
                more.add(new PrintModel.Extra(part, say("extra." + part.id() + ".name", Map.of()),
                        say("extra." + part.id() + ".hint", Map.of()), extras.contains(part)));
            }
        }
        return new PrintModel.Ready(saves, more, texts.get("paper.title"), lines, trouble.map(this::notice));
    }

    private boolean hasMistakes(Visit visit) {
        return showroom.quiz().outcomes(visit.beliefs()).containsValue(Outcome.WRONG);
    }

    private String notice(PrinterTrouble trouble) {
        PrintOutcome outcome = new PrintOutcome.Failed(trouble);
        return outcome.says(texts) + " " + outcome.todo(texts);
    }

    /** The code that the visit has, or that it can have for so many days. */
    CodeCard code(Visit visit, int days, boolean printed) {
        return visit.code()
                .map(code -> new CodeCard(Optional.of(code.code()),
                        say(printed ? "code.write-down" : "code.works", Map.of("day", texts.day(code.lastDay()))),
                        false))
                .orElseGet(() -> new CodeCard(Optional.empty(), say("code.offer", Map.of("days", days)), true));
    }

    /** Without a code, and why: so many were made lately, or none can be kept. */
    CodeCard noCode(boolean tooMany) {
        return new CodeCard(Optional.empty(), say(tooMany ? "code.too-many" : "code.broken", Map.of()), false);
    }

    /** The list, and what else is wanted. */
    static Set<Part> parts(Set<Part> extras) {
        EnumSet<Part> parts = EnumSet.of(Part.LIST);
        parts.addAll(extras);
        return parts;
    }

    PrintModel.Working working(boolean saving) {
        return new PrintModel.Working(say(saving ? "saving" : "printing", Map.of()), say("wait", Map.of()));
    }

    /** How it stands now, with a way on whatever it is. */
    PrintModel printed(Printed printed) {
        PrintOutcome outcome = printed.outcome();
        if (outcome instanceof PrintOutcome.Queued queued) {
            return queued.waitsFor().filter(PrinterTrouble::stops).isPresent()
                    ? new PrintModel.Waiting(outcome.says(texts), outcome.todo(texts))
                    : new PrintModel.Working(outcome.says(texts), outcome.todo(texts));
        }
        if (outcome instanceof PrintOutcome.Printed) {
            return new PrintModel.Done(say("on-paper", Map.of("pages", printed.pages())), say("take-it", Map.of()));
        }
        if (outcome instanceof PrintOutcome.Saved saved) {
            return new PrintModel.Done(say("saved", Map.of("pages", printed.pages())),
                    say("ask-for-it", Map.of("name", saved.file().getFileName().toString())));
        }
        if (outcome.isDone()) {
            return new PrintModel.Done(outcome.says(texts), outcome.todo(texts));
        }
        boolean canSave = !saves && !(outcome instanceof PrintOutcome.TooMany);
        return new PrintModel.Failed(outcome.says(texts), outcome.todo(texts), canSave);
    }

    /** Something went wrong that the printer did not tell of. */
    PrintModel.Failed broken() {
        return new PrintModel.Failed(say("broken", Map.of()), say("way-out", Map.of()), false);
    }

    private String say(String key, Map<String, ?> words) {
        return texts.get("kiosk.print." + key, words);
    }
}

package fencerow;

import fencerow.content.Content;
import fencerow.content.Problem;
import fencerow.content.StockFile;
import fencerow.desk.Memory;
import fencerow.desk.NotKeptException;
import fencerow.desk.StockBook;
import fencerow.desk.StockRow;
import fencerow.storage.Store;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes stock lists into the stock book, each whole or not at all. */
final class StockIntake {
    private static final System.Logger LOG = System.getLogger(StockIntake.class.getName());
    private static final String LAST_TAKEN = "stock-list";

    private final Store open;

    StockIntake(Store open) {
        this.open = open;
    }

    /** Takes the showroom's own list in if it has changed; what is wrong goes to the problems. */
    void takeIn(Path list, Content content, List<String> problems) {
        String digest = digest(list);
        if (open.findTrouble().isPresent() || !isToBeTaken(list, digest, problems)) {
            return;
        }
        List<String> wrong = take(list, content, true);
        if (wrong.isEmpty()) {
            open.memory().remember(LAST_TAKEN, digest);
            open.findKiosk().ifPresent(kiosk -> open.memory().remember(LAST_TAKEN + " " + kiosk, digest));
        } else {
            problems.add("the stock list was not taken in; what was known before is shown");
            problems.addAll(wrong);
        }
    }

    /** Takes a list in, whole or not at all. @return what is wrong with it; nothing if it was taken in */
    private List<String> take(Path list, Content content, boolean replace) {
        Map<UnitId, StockRow> before = new HashMap<>();
        open.stock().entries().forEach(entry -> before.put(entry.row().id(), entry.row()));
        var reader = new StockFile(content.units(), open.memory().columns(), Map.of());
        List<StockFile.Read> read = new ArrayList<>();
        StockBook.TakenIn taken = open.stock().take(replace, intake -> {
            read.add(reader.read(list, before, intake, rows -> { }));
            return read.get(0).isGood();
        });
        return taken.kept() ? List.of() : read.get(0).problems().stream().map(Problem::toString).toList();
    }

    /** Takes in what other programs have put into the folder for it. */
    void takeFrom(Inbox inbox, Content content) {
        if (open.findTrouble().isPresent()) {
            return;
        }
        for (Path list : inbox.findResting()) {
            try {
                List<String> wrong = take(list, content, false);
                if (wrong.isEmpty()) {
                    inbox.done(list);
                    LOG.log(System.Logger.Level.INFO, "A stock list was taken in from the folder for it");
                } else {
                    inbox.refused(list, wrong);
                }
            } catch (NotKeptException e) {
                inbox.refused(list, List.of(String.valueOf(e.getMessage())));
            }
        }
    }

    /**
     * Whether the list has changed since this kiosk last looked, and is not what another kiosk has brought. A kiosk
     * that is new to a stock others have filled does not change it: its list may be older than what staff did since.
     */
    private boolean isToBeTaken(Path list, String digest, List<String> problems) {
        Memory memory = open.memory();
        Optional<String> newest = memory.find(LAST_TAKEN);
        if (newest.equals(Optional.of(digest))) {
            open.findKiosk().map(kiosk -> LAST_TAKEN + " " + kiosk)
                    .filter(name -> !memory.find(name).equals(newest))
                    .ifPresent(name -> memory.remember(name, digest));
            return false;
        }
        if (newest.isEmpty() || open.findKiosk().isEmpty()) {
            return true;
        }
        String name = LAST_TAKEN + " " + open.findKiosk().get();
        Optional<String> seen = memory.find(name);
        String left = "left " + digest;
        if (seen.isEmpty()) {
            memory.remember(name, left);
        }
        if (seen.isEmpty() || seen.get().equals(left)) {
            problems.add(list + ": was not taken into the stock that kiosks share, which others have filled; change it"
                    + " here or use fencerow stock import if it is to be");
            return false;
        }
        return !seen.get().equals(digest);
    }

    /** A word that changes with the file's bytes; blank where it cannot be read. */
    private static String digest(Path file) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
        } catch (IOException e) {
            return "";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

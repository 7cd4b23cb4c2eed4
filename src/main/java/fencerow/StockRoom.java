package fencerow;

import fencerow.backoffice.Machine;
import fencerow.content.Content;
import fencerow.content.UnitReader;
import fencerow.desk.ComeBackBook;
import fencerow.desk.Counter;
import fencerow.desk.Counts;
import fencerow.desk.NotKeptException;
import fencerow.desk.StaffLock;
import fencerow.desk.StockBook;
import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.desk.Tally;
import fencerow.desk.VisitBook;
import fencerow.kiosk.frame.ComeBack;
import fencerow.storage.Server;
import fencerow.storage.Store;
import fencerow.storage.UnusableStoreException;
import fencerow.terms.AnswerCount;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import fencerow.visit.Showroom;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

/**
 * The units to show: those of the stock book, into which the showroom's stock list is taken at first and whenever it
 * has changed. Without a database, the stock list alone.
 */
final class StockRoom implements Counts, AutoCloseable {
    private static final System.Logger LOG = System.getLogger(StockRoom.class.getName());
    private static final int RECENT_MONTHS = 3;
    /** How long a change of another kiosk, or a server that is back, may go unseen. */
    private static final Duration LONGEST_UNSEEN = Duration.ofSeconds(1);

    private final Optional<Store> store;
    private final Optional<VisitBook> visits;
    private final List<String> notices;
    private final Path data;
    private final Optional<Inbox> inbox;
    private final Clock clock;
    private volatile boolean closed;

    private StockRoom(
            Path data, Optional<Store> store, Optional<Inbox> inbox, List<String> notices, Clock clock) {
        this.data = data;
        this.inbox = inbox;
        this.store = store;
        this.visits = store.map(open -> new VisitBook(open.journal(), clock));
        this.notices = List.copyOf(notices);
        this.clock = clock;
    }

    /**
     * Opens the database; where that cannot be done, staff are told and the kiosk goes on without.
     *
     * @param url         of the server that kiosks share; blank for a database of this one's own
     * @param inbox       the folder that other programs put stock lists into, below the data folder or from the root
     * @param environment variables, which may hold the login
     */
    static StockRoom open(
            Path data, String url, Optional<String> inbox, Map<String, String> environment, Clock clock) {
        Optional<Inbox> lists = inbox.map(folder -> new Inbox(data.resolve(folder), clock));
        try {
            Store store = Store.open(data, Server.find(url, environment, data), clock);
            var room = new StockRoom(data, Optional.of(store), lists, List.of(), clock);
            if (store.findKiosk().isPresent()) {
                var following = new Thread(room::follow, "shared stock");
                following.setDaemon(true);
                following.start();
            }
            room.forgetOldVisits();
            return room;
        } catch (UnusableStoreException e) {
            Optional<Store> copy = url.isBlank() ? Store.findToRead(data, e, clock) : Optional.empty();
            return new StockRoom(data, copy, lists, List.of("changes of the stock cannot be kept: " + e.getMessage()
                    + "; until the kiosk is started again, " + (copy.isPresent()
                            ? "the stock is shown as it was kept last" : "the stock list alone is shown")), clock);
        }
    }

    /** Follows what other kiosks change, until this is closed. */
    private void follow() {
        while (!closed) {
            try {
                store.orElseThrow().follow(LONGEST_UNSEEN);
            } catch (RuntimeException e) {
                LOG.log(System.Logger.Level.ERROR, "The shared stock could not be followed; tried again", e);
                LockSupport.parkNanos(LONGEST_UNSEEN.toNanos());
            }
        }
    }

    /** The database, where there is one. */
    Optional<Store> store() {
        return store;
    }

    /** Visits that shoppers may come back to, kept for so many days; nothing where there is no database. */
    Optional<ComeBack> comeBack(int days, StaffLock lock) {
        return store.map(open -> new ComeBackDesk(
                new ComeBackBook(open.comeBacks(), open.memory(), clock, new SecureRandom()), days, lock, clock));
    }

    /**
     * What is there to show now.
     *
     * @param showroom with the units that can be bought, and what shoppers answered in the quiz of late
     * @param problems for staff
     * @param state    equal as long as nothing has changed
     * @param pictures names of files, by unit
     */
    record Stocked(Showroom showroom, List<String> problems, String state, Map<UnitId, String> pictures) {}

    /**
     * Looks what is there.
     *
     * @param content what units are read against
     * @param list    the showroom's stock list; empty where it is not to be taken in
     */
    Stocked look(Content content, Optional<Path> list) {
        List<String> problems = new ArrayList<>(notices);
        store.ifPresent(open -> problems.addAll(open.notices()));
        Machine.findShortage(data).ifPresent(problems::add);
        inbox.ifPresent(lists -> problems.addAll(lists.problems()));
        if (store.isEmpty()) {
            return new Stocked(content.showroom(), problems, "", Map.of());
        }
        forgetOldVisits();
        StockBook book = store.get().stock();
        try {
            boolean taken = takeIn(content, list, problems);
            List<StockEntry> entries = book.entries();
            if (!taken && entries.isEmpty()) {
                return new Stocked(content.showroom(), problems, state(), Map.of());
            }
            LocalDate today = LocalDate.now(clock);
            List<StockRow> rows = entries.stream()
                    .filter(entry -> entry.sale().isShown(today))
                    .map(StockEntry::row)
                    .toList();
            UnitReader.Booked booked = content.units().read(rows);
            booked.problems().forEach(problem -> problems.add(problem.toString()));
            Showroom showroom = content.showroom().with(booked.units()).learned(answers(today, content.showroom()));
            return new Stocked(showroom, problems, state(), pictures(rows));
        } catch (NotKeptException e) {
            problems.add(String.valueOf(e.getMessage()));
            return new Stocked(content.showroom(), problems, "", Map.of());
        }
    }

    /** Takes the list in where it has changed. @return whether the book could be written, were there anything new */
    private boolean takeIn(Content content, Optional<Path> list, List<String> problems) {
        try {
            list.ifPresent(file -> new StockIntake(store.orElseThrow()).takeIn(file, content, problems));
            return true;
        } catch (NotKeptException e) {
            // What the book has is shown, with its holds and sales. A server that is away is told of already.
            if (store.orElseThrow().findTrouble().isEmpty()) {
                problems.add("the stock list was not taken in: " + e.getMessage());
            }
            return false;
        }
    }

    private static Map<UnitId, String> pictures(List<StockRow> rows) {
        Map<UnitId, String> pictures = new HashMap<>();
        rows.forEach(row -> row.find("picture").ifPresent(name -> pictures.put(row.id(), name)));
        return pictures;
    }

    /** Where staff change the units, where there is a database. */
    Optional<StockDesk> desk(Content content) {
        return store.map(open -> new StockDesk(open.stock(), content.units().form(), clock));
    }

    /** At the start and each day, for a look is taken on each. */
    private void forgetOldVisits() {
        try {
            store.ifPresent(open -> open.comeBacks().forgetBefore(LocalDate.now(clock)));
        } catch (NotKeptException e) {
            LOG.log(System.Logger.Level.WARNING, "Visits that are too old could not be deleted", e);
        }
    }

    /** How each quiz question was answered in the last year. */
    private Map<QuestionId, AnswerCount> answers(LocalDate today, Showroom showroom) {
        Tally year = store.orElseThrow().journal().sum(today.minusYears(1), today);
        Map<QuestionId, AnswerCount> answers = new HashMap<>();
        showroom.quiz().questions().forEach(question -> {
            String id = question.id().value();
            long wrong = year.count(Counter.Kind.BELIEF_WRONG, id);
            long other = year.count(Counter.Kind.BELIEF_RIGHT, id) + year.count(Counter.Kind.BELIEF_UNSURE, id);
            answers.put(question.id(), new AnswerCount(wrong + other, wrong));
        });
        return answers;
    }

    /** What visits of the last months came to. */
    Tally recent() {
        LocalDate today = LocalDate.now(clock);
        try {
            return store.map(open -> open.journal().sum(today.minusMonths(RECENT_MONTHS), today)).orElse(Tally.NONE);
        } catch (NotKeptException e) {
            return Tally.NONE;
        }
    }

    @Override
    public void ended(Tally visit) {
        try {
            visits.ifPresent(book -> book.ended(visit));
        } catch (NotKeptException e) {
            LOG.log(System.Logger.Level.WARNING, "Counts of visits could not be written yet", e);
        }
    }

    @Override
    public Tally sum(LocalDate from, LocalDate to) {
        return store.map(open -> open.journal().sum(from, to)).orElse(Tally.NONE);
    }

    @Override
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The state that a look would find now, without looking at any unit: what was changed, and which day it is. */
    String state() {
        try {
            return store.map(open -> open.stock().revision() + " on " + LocalDate.now(clock) + open.notices()
                            + inbox.map(Inbox::problems).orElse(List.of())
                            + (Machine.findShortage(data).isPresent() ? " short" : ""))
                    .orElse("");
        } catch (NotKeptException e) {
            return "";
        }
    }

    /** Takes in what other programs have put into the folder for it. */
    void takeInbox(Content content) {
        store.ifPresent(open -> inbox.ifPresent(lists -> new StockIntake(open).takeFrom(lists, content)));
    }

    @Override
    public void close() {
        closed = true;
        store.ifPresent(Store::close);
    }
}

package fencerow.storage;

import fencerow.desk.Journal;
import fencerow.desk.NotKeptException;
import fencerow.desk.NotKeptException.Cause;
import fencerow.desk.Tally;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;

/**
 * The server that kiosks share, and what this kiosk keeps for when it is away. Reading goes on from the copy; writing
 * is refused at once, but for counts, which wait. {@link #follow} keeps the copy fresh and finds the server again.
 */
final class SharedDatabase implements Database, Journal, AutoCloseable {
    private static final System.Logger LOG = System.getLogger(SharedDatabase.class.getName());

    private final DatabaseServer server;
    private final LastSeen copy;
    private final WaitingCounts waiting;
    private Optional<Connection> listening = Optional.empty();
    private volatile Optional<NotKeptException> trouble = Optional.empty();
    private volatile Optional<String> stale = Optional.empty();

    /** Looks for the server; goes on without. @throws NotKeptException if the folder cannot be written */
    SharedDatabase(Server server, Path folder, Clock clock) {
        this.waiting = new WaitingCounts(folder);
        this.copy = new LastSeen(folder, clock);
        this.server = new DatabaseServer(server);
        try {
            this.server.checkVersion();
        } catch (NotKeptException e) {
            trouble = Optional.of(e);
        }
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        Optional<NotKeptException> known = trouble;
        if (known.isEmpty()) {
            try {
                return server.read(work);
            } catch (NotKeptException e) {
                known = Optional.of(noted(e));
            }
        }
        NotKeptException why = known.get();
        return copy.read(work).orElseThrow(() -> why);
    }

    /** The same without the copy: what it does not have is not answered while the server is away. */
    Database serverAlone() {
        return new Database() {
            @Override
            public <T> T read(Function<Handle, T> work) {
                return whileThere(() -> server.read(work));
            }

            @Override
            public <T> T write(Function<Handle, T> work) {
                return SharedDatabase.this.write(work);
            }
        };
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        return whileThere(() -> server.write(work));
    }

    private <T> T whileThere(Supplier<T> work) {
        Optional<NotKeptException> known = trouble;
        if (known.isPresent()) {
            throw known.get();
        }
        try {
            return work.get();
        } catch (NotKeptException e) {
            throw noted(e);
        }
    }

    /** Remembers that the server is away; anything else is thrown on. */
    private NotKeptException noted(NotKeptException e) {
        if (e.why() != Cause.AWAY) {
            throw e;
        }
        trouble = Optional.of(e);
        return e;
    }

    @Override
    public void add(LocalDate day, Tally counts) {
        if (counts.counts().isEmpty()) {
            return;
        }
        waiting.add(day, counts);
        if (trouble.isEmpty()) {
            try {
                waiting.handIn(this);
            } catch (NotKeptException e) {
                LOG.log(System.Logger.Level.WARNING, "Counts wait for the server", e);
            }
        }
    }

    @Override
    public Tally sum(LocalDate from, LocalDate to) {
        return new SqlJournal(this).sum(from, to);
    }

    /** The name of this kiosk among those that share the server. */
    String kiosk() {
        return waiting.kiosk();
    }

    /** Why the server cannot be used now, if it cannot. */
    Optional<NotKeptException> trouble() {
        return trouble;
    }

    /** What staff must know. */
    List<String> notices() {
        List<String> notices = new ArrayList<>();
        trouble.ifPresent(why -> notices.add(why.getMessage() + "; " + copy.time()
                .map(time -> "the stock is shown as it was last seen (" + time + "), and cannot be changed for now")
                .orElse("the stock list of this kiosk is shown")));
        stale.ifPresent(notices::add);
        try {
            copy.others().forEach(other -> notices.add(server + ": the server came back with other data than before;"
                    + " see whether it is the right one, and take over what is missing by hand. What was seen before"
                    + " is kept as " + other + "; delete that file when all is well"));
        } catch (IOException e) {
            notices.add("the data folder cannot be read (" + e.getClass().getSimpleName() + "); see to the disk");
        }
        return notices;
    }

    /**
     * Waits until the server's data have changed, at most so long; then keeps the copy fresh, hands in what waits and
     * finds out whether the server is there. Where it tells of no changes, the look after the wait finds them.
     */
    synchronized void follow(Duration most) {
        try {
            if (listening.isEmpty()) {
                server.checkVersion();
                listening = Optional.of(server.listen());
            } else {
                server.await(listening.get(), most);
            }
        } catch (NotKeptException e) {
            trouble = Optional.of(e);
            hangUp();
            pause(most);
            return;
        }
        look();
    }

    private void look() {
        try {
            Mark now = server.read(Mark::of);
            Optional<Mark> before = copy.mark();
            if (before.filter(seen -> !seen.equals(now)).isPresent()
                    && !server.<Boolean>read(before.get()::isContinuedIn)) {
                LOG.log(System.Logger.Level.WARNING, "The server came back with other data");
                copy.setAside();
            }
            if (before.isEmpty() || copy.mark().isEmpty() || copy.isOld(now)) {
                copy.refresh(server);
            }
            stale = Optional.empty();
            trouble = Optional.empty();
            handIn();
        } catch (NotKeptException e) {
            if (e.why() == Cause.AWAY) {
                trouble = Optional.of(e);
                hangUp();
            } else {
                stale = Optional.of(e.getMessage() + " (what is kept for when the server is away is not fresh)");
            }
        } catch (IOException e) {
            stale = Optional.of("the copy of the server's data cannot be kept (" + e.getClass().getSimpleName()
                    + "); see to the disk");
        }
    }

    /** A server that is there and takes nothing is told of: nobody need have tried to change anything. */
    private void handIn() {
        try {
            waiting.handIn(server);
        } catch (NotKeptException e) {
            if (e.why() == Cause.AWAY) {
                throw e;
            }
            stale = Optional.of(e.getMessage() + " (counts of visits wait, and the stock cannot be changed)");
        }
    }

    private void hangUp() {
        try {
            if (listening.isPresent()) {
                listening.get().close();
            }
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.DEBUG, "The connection was broken already", e);
        }
        listening = Optional.empty();
    }

    private static void pause(Duration most) {
        try {
            Thread.sleep(most.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        // Waiting for the next change ends when its connection does.
        server.close();
    }
}

package fencerow.storage;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A PostgreSQL server that several kiosks share, and the login for it. Never says the login: not in its text, not in an
 * error.
 */
public final class Server {
    /** The variable that holds the user, and the one that holds the password. */
    public static final String USER = "FENCEROW_DATABASE_USER";

    public static final String PASSWORD = "FENCEROW_DATABASE_PASSWORD";

    /** The variable that names a file with {@code user=} and {@code password=}. */
    public static final String LOGIN = "FENCEROW_DATABASE_LOGIN";

    /** The file's name in the data folder, where no variable names another. */
    public static final String LOGIN_FILE = "database.login";

    private static final Pattern URL = Pattern.compile(
            "(?:jdbc:)?postgresql://((?:[A-Za-z0-9._-]+|\\[[0-9A-Fa-f:]+\\])(?::\\d{1,5})?/[A-Za-z0-9._-]+)(\\?.*)?");
    private static final Pattern SECRET = Pattern.compile("(?i)[?&](user|password|sslpassword)=");

    private final String place;
    private final String parameters;
    private final String user;
    private final String password;

    private Server(Matcher url, String user, String password) {
        this.place = url.group(1);
        this.parameters = Optional.ofNullable(url.group(2)).orElse("");
        this.user = user;
        this.password = password;
    }

    /**
     * The server that a URL names, with the login of the environment, or of the file that it names, or of the one in
     * the data folder.
     *
     * @param url         {@code postgresql://host[:port]/database[?parameters]}, parameters as the driver knows them;
     *                    blank for no server
     * @param environment variables
     * @param data        the kiosk's data folder
     * @throws UnusableStoreException if the URL is none, or there is no login
     */
    public static Optional<Server> find(String url, Map<String, String> environment, Path data)
            throws UnusableStoreException {
        if (url.isBlank()) {
            return Optional.empty();
        }
        Optional<String> user = Optional.ofNullable(environment.get(USER));
        Optional<String> password = Optional.ofNullable(environment.get(PASSWORD));
        if (user.isPresent() && password.isPresent()) {
            return Optional.of(new Server(place(url), user.get(), password.get()));
        }
        return Optional.of(of(url, Optional.ofNullable(environment.get(LOGIN))
                .map(Path::of)
                .orElse(data.resolve(LOGIN_FILE))));
    }

    /**
     * The server that a URL names, with the login of a file.
     *
     * @param url   as in {@link #find}
     * @param login a file with {@code user=} and {@code password=}, which nobody but its owner may read
     * @throws UnusableStoreException if the URL is none, or the file cannot be used
     */
    public static Server of(String url, Path login) throws UnusableStoreException {
        Matcher place = place(url);
        var properties = new Properties();
        try {
            if (Files.getFileStore(login).supportsFileAttributeView("posix")) {
                Set<PosixFilePermission> rights = Files.getPosixFilePermissions(login);
                if (rights.contains(PosixFilePermission.OTHERS_READ)
                        || rights.contains(PosixFilePermission.GROUP_READ)) {
                    throw new UnusableStoreException(login + ": others than its owner may read the login of the"
                            + " database; chmod 600 it");
                }
            }
            try (Reader file = Files.newBufferedReader(login)) {
                properties.load(file);
            }
        } catch (IOException | IllegalArgumentException e) {
            // The cause is left out: it may quote the file.
            throw new UnusableStoreException("the login of the database is neither in " + USER + " and " + PASSWORD
                    + " nor can [" + login + "] be read; write user= and password= there, one a line");
        }
        String user = properties.getProperty("user", "");
        String password = properties.getProperty("password", "");
        if (user.isBlank() || password.isBlank()) {
            throw new UnusableStoreException(login + ": there is no user or no password in it; write user= and"
                    + " password=, one a line");
        }
        return new Server(place, user, password);
    }

    private static Matcher place(String url) throws UnusableStoreException {
        Matcher matcher = URL.matcher(url);
        if (SECRET.matcher(url).find() || url.contains("@")) {
            throw new UnusableStoreException("the URL of the database holds a login; take it out of the URL and write"
                    + " it into " + LOGIN_FILE + " in the data folder, which others may not read");
        }
        if (!matcher.matches()) {
            throw new UnusableStoreException(
                    "[" + url + "] is no URL of a database; write postgresql://host:port/database, or nothing");
        }
        return matcher;
    }

    /** What the driver connects to. */
    String url() {
        return "jdbc:postgresql://" + place + parameters;
    }

    String user() {
        return user;
    }

    String password() {
        return password;
    }

    /** Host, port and database. */
    @Override
    public String toString() {
        return place;
    }
}

package fencerow.backoffice;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.function.UnaryOperator;

/**
 * What the command line is given by whoever runs it.
 *
 * @param home    the folder below which content and configuration are, unless told otherwise
 * @param clock   dates printed lists
 * @param machine what it all runs on
 * @param reader  reads content for whatever works on it; what is checked is read from the files themselves
 * @param kiosk   opens the kiosk
 * @param dataFolder where what must not be lost is kept, by the configuration's folder
 * @param out     where results go
 * @param err     where complaints go
 */
public record Surroundings(
        Path home, Clock clock, Machine machine, ContentSource reader, KioskLauncher kiosk,
        UnaryOperator<Path> dataFolder, PrintWriter out, PrintWriter err) {}

package fencerow;

import fencerow.backoffice.FencerowCommand;
import fencerow.backoffice.Machine;
import fencerow.backoffice.StandardStreams;
import fencerow.backoffice.Surroundings;
import fencerow.content.ContentReader;
import fencerow.content.DataFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.function.UnaryOperator;

/**
 * The entry point: makes what the parts are given and hands over to the command line. The one class that ends the
 * process.
 *
 * <p>System properties: {@code fencerow.home}, the folder below which {@code content} and {@code kiosk-config} are (the
 * working directory if not set); {@code fencerow.window}, {@code WxH} to run the kiosk in an ordinary window;
 * {@code fencerow.data}, where the kiosk keeps what it must not lose (what {@code data-folder} in the
 * configuration says if not set).
 */
public final class Main {
    private Main() {}

    /**
     * Runs one command; without any, the kiosk.
     *
     * @param arguments as typed
     */
    public static void main(String[] arguments) {
        Path home = Path.of(System.getProperty("fencerow.home", ""));
        UnaryOperator<Path> data = Main::dataFolder;
        Clock clock = Clock.system(ZoneId.systemDefault());
        var kiosk = new KioskWiring(clock, System.getProperty("fencerow.window", ""), data);
        var machine = new Machine(System.getProperty("os.name"), Path.of("/"), System.getenv(),
                data.apply(home.resolve("kiosk-config")));
        var surroundings =
                new Surroundings(home, clock, machine, new ContentReader()::read, kiosk, data, StandardStreams.out(),
                        StandardStreams.err());
        int code = FencerowCommand.run(surroundings, arguments);
        if (code == FencerowCommand.HANGING) {
            // An orderly exit would wait for the screen.
            Runtime.getRuntime().halt(code);
        }
        System.exit(code);
    }

    private static Path dataFolder(Path config) {
        String given = System.getProperty("fencerow.data", "");
        return given.isBlank() ? DataFolder.of(config, Path.of(System.getProperty("user.home"))) : Path.of(given);
    }
}

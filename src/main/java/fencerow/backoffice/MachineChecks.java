package fencerow.backoffice;

import fencerow.backoffice.document.DoctorDocument.Check;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks at the machine: whether a window can be opened, words drawn and spoken, data kept. */
final class MachineChecks {
    /** Shared libraries that JavaFX loads on Linux, and the Debian packages that have them. */
    private static final Map<String, String> LIBRARIES = new TreeMap<>(Map.of(
            "libgtk-3.so.0", "libgtk-3-0",
            "libGL.so.1", "libgl1",
            "libfreetype.so.6", "libfreetype6",
            "libpangoft2-1.0.so.0", "libpangoft2-1.0-0",
            "libfontconfig.so.1", "libfontconfig1"));
    private static final Pattern LOCAL_DISPLAY = Pattern.compile("(?:unix)?:(\\d{1,5})(?:\\.\\d+)?");
    private static final long MEGABYTE = Machine.MEGABYTE;
    private static final long LITTLE_DISK = 1_000 * MEGABYTE;
    private static final long LEAST_HEAP = 400 * MEGABYTE;

    private final Machine machine;
    private final long heap;

    /** Looks at the machine; {@code heap} is the most memory the program may use, in bytes. */
    MachineChecks(Machine machine, long heap) {
        this.machine = machine;
        this.heap = heap;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        checks.add(memory());
        if (machine.isLinux()) {
            checks.add(display());
            checks.addAll(libraries());
            checks.add(sound());
            checks.add(speech());
        } else {
            checks.add(Check.remark("system", machine.system() + " has not been tried",
                    "use Linux, or try everything before shoppers do"));
        }
        checks.add(data());
        checks.add(disk());
        return checks;
    }

    private Check memory() {
        String what = "the program may use " + heap / MEGABYTE + " MB";
        return heap >= LEAST_HEAP
                ? Check.fine("memory", what)
                : Check.lacking("memory", what, "give it at least " + LEAST_HEAP / MEGABYTE
                        + " MB by -Xmx, or use a machine with 2 GB or more");
    }

    private Check display() {
        Optional<String> name = machine.find("DISPLAY");
        if (name.isEmpty()) {
            return Check.lacking("display", "no X server is named (DISPLAY is not set)",
                    "run this in the kiosk's session; packaging's README says how to set one up");
        }
        Matcher local = LOCAL_DISPLAY.matcher(name.get());
        if (local.matches() && !machine.has("tmp/.X11-unix/X" + local.group(1))) {
            return Check.lacking("display", "no X server answers to [" + name.get() + "]",
                    "start the X server, or correct DISPLAY");
        }
        return Check.fine("display", "an X server is named [" + name.get() + "]");
    }

    private List<Check> libraries() {
        List<Check> missing = new ArrayList<>();
        LIBRARIES.forEach((library, debian) -> {
            if (!machine.hasLibrary(library)) {
                missing.add(Check.lacking("libraries", library + " is not there",
                        "install the package " + debian + " or your system's own of that library"));
            }
        });
        return missing.isEmpty()
                ? List.of(Check.fine("libraries", "all that draw windows and words are there"))
                : missing;
    }

    private Check sound() {
        return machine.has("proc/asound/card0") || machine.has("dev/snd/controlC0")
                ? Check.fine("sound", "there is a sound card")
                : Check.remark("sound", "there is no sound card", "connect one if the kiosk is to be heard");
    }

    private Check speech() {
        return machine.hasProgram("espeak-ng")
                ? Check.fine("speech", "espeak-ng is there")
                : Check.remark("speech", "espeak-ng is not there",
                        "install the package espeak-ng if the kiosk is to read aloud");
    }

    private Check data() {
        return machine.canKeepData()
                ? Check.fine("data", "files can be written in [" + machine.data() + "]")
                : Check.lacking("data", "no files can be written in [" + machine.data() + "]",
                        "make it a folder of the user the kiosk runs as, or set fencerow.data to another one");
    }

    private Check disk() {
        Optional<Long> free = machine.findFreeSpace();
        if (free.isEmpty()) {
            return Check.remark("disk", "how much is free cannot be told", "look at it yourself");
        }
        String what = free.get() / MEGABYTE + " MB are free";
        if (free.get() < Machine.LEAST_DISK) {
            return Check.lacking("disk", what, "free at least " + Machine.LEAST_DISK / MEGABYTE + " MB");
        }
        return free.get() < LITTLE_DISK
                ? Check.remark("disk", what, "free " + LITTLE_DISK / MEGABYTE + " MB before long")
                : Check.fine("disk", what);
    }
}

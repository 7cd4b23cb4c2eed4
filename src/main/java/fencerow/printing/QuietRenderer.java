package fencerow.printing;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Keeps the renderer from writing to the error stream; what matters reaches us as diagnostics of each document. */
final class QuietRenderer implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {
        // told as a diagnostic
    }

    @Override
    public void log(String where, Level level, String message, Throwable cause) {
        // told as a diagnostic
    }

    @Override
    public void setLevel(String logger, Level level) {
        // fixed
    }

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
        return diagnostic.getLevel().intValue() >= Level.WARNING.intValue();
    }
}

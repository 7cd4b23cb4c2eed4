package fencerow.printing;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What keeps a printer from printing, or soon will; the worst first. Reasons are the keywords of
 * {@code printer-state-reasons}, RFC 8011 section 5.4.12 and PWG 5100.9, without their severity.
 */
public enum PrinterTrouble {
    /** It does not answer. */
    OFFLINE("offline", true, "shutdown", "timed-out", "offline", "connecting-to-device", "hold-new-jobs"),
    /** There is none of that name. */
    NOT_FOUND("not-found", true),
    /** It cannot read PDF. */
    WRONG_FORMAT("wrong-format", true),
    /** It does not take jobs. */
    NOT_ACCEPTING("not-accepting", true, "spool-area-full"),
    /** It turned the job away. */
    REFUSED("refused", true),
    /** Somebody stopped the job. */
    CANCELLED("cancelled", true),
    /** Paper is stuck. */
    JAM("jam", true, "media-jam", "media-path-jam", "input-media-tray-jam"),
    /** A cover or door is open. */
    COVER_OPEN("cover-open", true, "cover-open", "door-open", "interlock-open"),
    /** There is no paper. */
    OUT_OF_PAPER("out-of-paper", true, "media-empty", "media-needed"),
    /** The tray is not in. */
    TRAY_MISSING("tray-missing", true, "input-tray-missing", "output-tray-missing"),
    /** Nothing more fits on the tray where pages come out. */
    OUTPUT_FULL("output-full", true, "output-area-full"),
    /** There is no toner or ink. */
    OUT_OF_INK("out-of-ink", true, "toner-empty", "marker-supply-empty", "marker-ink-empty", "marker-toner-empty",
            "developer-empty", "marker-supply-missing", "marker-toner-cartridge-missing"),
    /** Somebody paused it. */
    PAUSED("paused", true, "paused", "moving-to-paused"),
    /** It stopped, and does not say why in words known here. */
    TROUBLE("trouble", true),
    /** Little paper is left. */
    LOW_ON_PAPER("low-on-paper", false, "media-low"),
    /** Little toner or ink is left. */
    LOW_ON_INK("low-on-ink", false, "toner-low", "marker-supply-low", "marker-supply-almost-empty",
            "marker-ink-almost-empty", "marker-toner-almost-empty", "developer-low");

    private static final List<String> SEVERITIES = List.of("-error", "-warning", "-report");

    private final String id;
    private final boolean stops;
    private final Set<String> reasons;

    PrinterTrouble(String id, boolean stops, String... reasons) {
        this.id = id;
        this.stops = stops;
        this.reasons = Set.of(reasons);
    }

    /** The word used in text keys, below {@code paper.printer}. */
    public String id() {
        return id;
    }

    /** Whether nothing is printed until somebody has seen to it. */
    public boolean stops() {
        return stops;
    }

    /**
     * What a printer's own reasons come to, the worst of them.
     *
     * @param stopped whether the printer says that it has stopped
     * @param working whether it is at work on our job, so that even a mild reason may be why it takes so long; else a
     *                reason that is no error does not keep it from printing
     * @param reasons its keywords, with or without severity
     */
    static Optional<PrinterTrouble> worst(boolean stopped, boolean working, Collection<String> reasons) {
        Predicate<String> counts = reason -> stopped || working || reason.endsWith("-error");
        Optional<PrinterTrouble> stopping = first(reasons.stream().filter(counts).toList(), true);
        if (stopping.isPresent()) {
            return stopping;
        }
        return stopped ? Optional.of(TROUBLE) : first(reasons, false);
    }

    private static Optional<PrinterTrouble> first(Collection<String> reasons, boolean stops) {
        List<String> plain = reasons.stream().map(PrinterTrouble::withoutSeverity).toList();
        return Arrays.stream(values())
                .filter(trouble -> trouble.stops == stops && plain.stream().anyMatch(trouble.reasons::contains))
                .findFirst();
    }

    private static String withoutSeverity(String reason) {
        for (String severity : SEVERITIES) {
            if (reason.endsWith(severity)) {
                return reason.substring(0, reason.length() - severity.length());
            }
        }
        return reason;
    }
}

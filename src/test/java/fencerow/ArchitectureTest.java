package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import fencerow.terms.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the house to its plan: every part uses what its package-info draws and nothing else.
 *
 * <p>Plain test methods on purpose: rules written as fields are silently not run by some versions of Surefire.
 */
class ArchitectureTest {

    private static final Set<String> PLAN = Set.of(
            "terms", "explainers", "stock", "needs", "sizing", "search", "match", "quiz", "desk",
            "checklist", "visit", "wording", "content", "printing", "storage", "kiosk", "backoffice");

    /** Parts whose drawn arrows must all be taken. A part joins when it is written; in the end all are here. */
    private static final Set<String> SETTLED = Set.of("terms", "explainers", "stock");

    private static final int FEWEST_CLASSES = 50;

    private static final Pattern EMPTY_WORD =
            Pattern.compile("Utils?|Common|Helpers?|Managers?|Services?|Impl", Pattern.CASE_INSENSITIVE);

    /** Packages of libraries, and the parts outside which nobody may name them. */
    private record OnlyHere(String what, Set<String> packages, Set<String> parts, boolean rootToo) {
        @Override
        public String toString() {
            return what;
        }
    }

    static List<OnlyHere> onlyHere() {
        return List.of(
                new OnlyHere("JavaFX", Set.of("javafx", "com.sun.javafx", "org.kordamp.ikonli"), Set.of("kiosk"), true),
                new OnlyHere("Lucene", Set.of("org.apache.lucene"), Set.of("search"), false),
                new OnlyHere("SQL", Set.of("java.sql", "javax.sql", "org.sqlite", "org.flywaydb", "org.jdbi"),
                        Set.of("storage"), false),
                new OnlyHere("YAML, CSV, spreadsheets and CommonMark",
                        Set.of("org.snakeyaml", "org.apache.commons.csv", "org.dhatim.fastexcel", "org.commonmark"),
                        Set.of("content"), false),
                new OnlyHere("PDF libraries, printers and java.desktop",
                        Set.of("com.openhtmltopdf", "org.apache.pdfbox", "org.apache.fontbox", "org.apache.xmpbox",
                                "de.rototor.pdfbox", "de.gmuth.ipp", "java.awt", "java.beans", "javax.imageio",
                                "javax.print", "javax.swing"),
                        Set.of("printing"), false),
                new OnlyHere("picocli and JSON", Set.of("picocli", "com.fasterxml.jackson"),
                        Set.of("backoffice"), false));
    }

    @Test
    void theHouseIsReadAndHasTheMarkedParts() {
        assertTrue(House.classes().size() >= FEWEST_CLASSES,
                () -> "only " + House.classes().size() + " classes were read; the rules would check next to nothing");
        assertEquals(new TreeSet<>(PLAN), House.parts().keySet(), "parts marked with @Part against the plan");
    }

    @Test
    void everyClassOutsideTheRootBelongsToAPart() {
        assertNone(House.classes().stream()
                .filter(type -> !House.isInRoot(type))
                .filter(type -> House.partOf(type).filter(PLAN::contains).isEmpty())
                .map(type -> type.getName() + " lies in no part; move it into one of " + new TreeSet<>(PLAN))
                .toList());
    }

    @Test
    void drawnArrowsGoDownwardOrAlongAFloorAndNeverInACircle() {
        Map<String, Part> parts = House.parts();
        List<String> wrong = new ArrayList<>();
        parts.forEach((name, part) -> {
            for (String used : part.mayUse()) {
                if (!parts.containsKey(used)) {
                    wrong.add(name + " may use " + used + ", which is no part");
                } else if (parts.get(used).floor() > part.floor()) {
                    wrong.add(name + " may use " + used + ", which stands on a higher floor");
                } else if (reaches(parts, used, name, new TreeSet<>())) {
                    wrong.add(name + " may use " + used + ", which comes back to it");
                }
            }
        });
        assertNone(wrong);
    }

    private static boolean reaches(Map<String, Part> parts, String from, String goal, Set<String> seen) {
        return from.equals(goal) || parts.containsKey(from) && seen.add(from)
                && Arrays.stream(parts.get(from).mayUse()).anyMatch(next -> reaches(parts, next, goal, seen));
    }

    @Test
    void everyTakenArrowIsDrawn() {
        List<String> wrong = new ArrayList<>();
        House.parts().forEach((name, part) -> House.taken(name).forEach((used, example) -> {
            if (!Set.of(part.mayUse()).contains(used)) {
                wrong.add(name + " may not use " + used + ": " + example);
            }
        }));
        assertNone(wrong);
    }

    @Test
    void everyDrawnArrowOfASettledPartIsTaken() {
        Map<String, Part> parts = House.parts();
        Set<String> written = House.partsWithCode();
        List<String> wrong = new ArrayList<>();
        for (String name : SETTLED) {
            for (String used : parts.get(name).mayUse()) {
                if (written.contains(name) && written.contains(used) && !House.taken(name).containsKey(used)) {
                    wrong.add(name + " draws an arrow to " + used + " and never takes it; take it out of @Part");
                }
            }
        }
        assertNone(wrong);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("onlyHere")
    void aLibraryIsNamedOnlyInItsPart(OnlyHere rule) {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : House.classes()) {
            boolean home = House.partOf(type).filter(rule.parts()::contains).isPresent()
                    || rule.rootToo() && House.isInRoot(type);
            if (!home) {
                House.targetsOf(type)
                        .filter(target -> House.isWithin(target, rule.packages()))
                        .forEach(target -> wrong.add(type.getName() + " uses " + target.getName() + "; " + rule.what()
                                + " only in " + rule.parts()));
            }
        }
        assertNone(wrong);
    }

    @Test
    void theFloorsBelowTheEdgesKnowNoFilesAndNoNetwork() {
        List<String> wrong = new ArrayList<>();
        House.parts().forEach((name, part) -> {
            if (part.floor() < 4) {
                House.classesOf(name).forEach(type -> House.targetsOf(type)
                        .filter(target -> opensFiles(target) || House.isWithin(target, Set.of("java.net")))
                        .forEach(target -> wrong.add(type.getName() + " uses " + target.getName()
                                + "; files and network only on the floor of the edges")));
            }
        });
        assertNone(wrong);
    }

    private static boolean opensFiles(JavaClass type) {
        return type.getPackageName().equals("java.nio.file") && type.getSimpleName().startsWith("File")
                || type.getPackageName().equals("java.io") && type.getSimpleName().startsWith("File");
    }

    @Test
    void threadsAreStartedOnlyByTheFrameAndTheRoot() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : House.classes()) {
            if (!House.isInRoot(type) && !House.isWithin(type, Set.of("fencerow.kiosk.frame"))) {
                type.getCodeUnitAccessesFromSelf().stream()
                        .filter(ArchitectureTest::concernsThreads)
                        .forEach(access -> wrong.add(access.getDescription() + "; leave threads to kiosk.frame"));
            }
        }
        assertNone(wrong);
    }

    private static boolean concernsThreads(JavaCodeUnitAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        boolean made = access.getTarget().getName().equals("<init>");
        return switch (owner.getName()) {
            case "javafx.application.Platform" -> Set.of("runLater", "startup").contains(access.getName());
            case "java.util.concurrent.Executors" -> access.getName().startsWith("new");
            case "java.util.concurrent.CompletableFuture" -> access.getName().endsWith("Async");
            case "java.util.Timer" -> made;
            default -> made && (owner.isAssignableTo(Thread.class) || owner.isAssignableTo(ExecutorService.class));
        };
    }

    @Test
    void sizingIsPureArithmeticOverTheTerms() {
        Set<String> fine = Set.of("fencerow.sizing", "fencerow.terms", "java.lang", "java.util", "org.jspecify");
        Set<String> notEven = Set.of("java.util.concurrent", "java.util.logging", "java.util.zip", "java.util.jar");
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : House.classesOf("sizing")) {
            House.targetsOf(type)
                    .filter(target -> !target.isPrimitive())
                    .filter(target -> !House.isWithin(target, fine) || House.isWithin(target, notEven))
                    .forEach(target -> wrong.add(type.getName() + " uses " + target.getName()));
        }
        assertNone(wrong);
    }

    @Test
    void everyPackageIsNullMarked() {
        Set<String> packages = new TreeSet<>();
        House.classes().forEach(type -> packages.add(type.getPackageName()));
        assertNone(packages.stream()
                .filter(name -> House.packageInfo(name)
                        .filter(info -> info.isAnnotatedWith("org.jspecify.annotations.NullMarked"))
                        .isEmpty())
                .map(name -> name + " has no package-info.java with @NullMarked; write one")
                .toList());
    }

    @Test
    void namesSayWhatAThingIs() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : House.classes()) {
            List<String> words = new ArrayList<>(List.of(type.getPackageName().split("\\.", -1)));
            words.addAll(List.of(type.getSimpleName().split("(?<=[a-z0-9])(?=[A-Z])", -1)));
            if (words.stream().anyMatch(word -> EMPTY_WORD.matcher(word).matches())) {
                wrong.add(type.getName() + " has a name that says nothing; call it by what it is");
            }
        }
        assertNone(wrong);
    }

    private static void assertNone(List<String> wrong) {
        Set<String> distinct = new TreeSet<>(wrong);
        if (!distinct.isEmpty()) {
            fail(distinct.size() + " found:\n" + String.join("\n", distinct));
        }
    }
}

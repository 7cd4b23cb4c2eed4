package fencerow;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import fencerow.terms.Part;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The compiled main classes, read once, and the parts that their package-infos draw. */
final class House {

    static final String ROOT = "fencerow";

    private static final String MARK = ".package-info";
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    private House() {}

    /** Every class but the package-infos, whose annotations would count as arrows. */
    static List<JavaClass> classes() {
        return CLASSES.stream().filter(type -> !type.getName().endsWith(MARK)).toList();
    }

    static List<JavaClass> classesOf(String part) {
        return classes().stream().filter(type -> partOf(type).equals(Optional.of(part))).toList();
    }

    static Set<String> partsWithCode() {
        return classes().stream().flatMap(type -> partOf(type).stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The drawn parts by name. */
    static Map<String, Part> parts() {
        Map<String, Part> parts = new TreeMap<>();
        for (JavaClass type : CLASSES) {
            if (type.getName().endsWith(MARK)) {
                type.tryGetAnnotationOfType(Part.class)
                        .ifPresent(part -> parts.put(type.getPackageName().substring(ROOT.length() + 1), part));
            }
        }
        return parts;
    }

    /** The package-info of a package, if it has one that leaves a trace in the class files. */
    static Optional<JavaClass> packageInfo(String packageName) {
        return CLASSES.contain(packageName + MARK) ? Optional.of(CLASSES.get(packageName + MARK)) : Optional.empty();
    }

    static boolean isInRoot(JavaClass type) {
        return type.getPackageName().equals(ROOT);
    }

    /** The name of the package right below the root, the part that a class of ours belongs to. */
    static Optional<String> partOf(JavaClass type) {
        if (!type.getPackageName().startsWith(ROOT + ".")) {
            return Optional.empty();
        }
        return Optional.of(type.getPackageName().substring(ROOT.length() + 1).split("\\.", 2)[0]);
    }

    /** What a class depends on, arrays seen as their elements. */
    static Stream<JavaClass> targetsOf(JavaClass type) {
        return type.getDirectDependenciesFromSelf().stream()
                .map(Dependency::getTargetClass)
                .map(JavaClass::getBaseComponentType);
    }

    /** The other parts that a part's classes use, each with one class that does. */
    static Map<String, String> taken(String part) {
        Map<String, String> arrows = new TreeMap<>();
        for (JavaClass type : classesOf(part)) {
            targetsOf(type).forEach(target -> partOf(target)
                    .filter(other -> !other.equals(part))
                    .ifPresent(other -> arrows.putIfAbsent(other, type.getName() + " uses " + target.getName())));
        }
        return arrows;
    }

    /** Whether a class lies in one of these packages or below. */
    static boolean isWithin(JavaClass type, Set<String> packages) {
        return packages.stream().anyMatch(name ->
                type.getPackageName().equals(name) || type.getPackageName().startsWith(name + "."));
    }
}

package fencerow.terms;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a package as one part of the house: the floor it stands on and the parts it may use.
 *
 * <p>Sub-packages belong to the part of the nearest marked package above them. The architecture test compares the
 * arrows drawn here with the ones the classes take. The annotation is read from class files only, never at run time.
 */
@Documented
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.PACKAGE)
public @interface Part {

    /**
     * The floor the part stands on: 0 is the ground, 4 holds the edges. Arrows go to a lower floor, or along a floor
     * where {@link #mayUse()} names the neighbour.
     *
     * @return a number from 0 to 4
     */
    int floor();

    /**
     * The parts this one may use, each by its first package name below the root ({@code "terms"}).
     *
     * @return the names, in no order; empty for a part that stands alone
     */
    String[] mayUse() default {};
}

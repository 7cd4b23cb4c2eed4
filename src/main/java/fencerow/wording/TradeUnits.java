package fencerow.wording;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;

import fencerow.terms.UnitOfMeasure;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * The trade's units as JSR-385 units. Those that the library's US customary system lacks are built here: pound-force
 * and what is made of it (psi, ft-lbf, in-lbf), gallons a minute, and rates an hour. The library's horsepower is the
 * mechanical one.
 */
final class TradeUnits {
    /** Standard gravity in m/s2: what makes a pound of mass a pound of force. */
    private static final double GRAVITY = 9.80665;

    private static final Map<UnitOfMeasure, UnitConverter> TO_SI = converters();

    private TradeUnits() {}

    /** Whether a library unit stands behind it; money has none. */
    static boolean knows(UnitOfMeasure unit) {
        return TO_SI.containsKey(unit);
    }

    /** A number of the unit in the SI unit of its dimension; money unchanged. */
    static double toSi(UnitOfMeasure unit, double value) {
        UnitConverter converter = TO_SI.get(unit);
        return converter == null ? value : converter.convert(value);
    }

    /** A number of the dimension's SI unit in the unit; money unchanged. */
    static double fromSi(UnitOfMeasure unit, double si) {
        UnitConverter converter = TO_SI.get(unit);
        return converter == null ? si : converter.inverse().convert(si);
    }

    private static Map<UnitOfMeasure, UnitConverter> converters() {
        Map<UnitOfMeasure, UnitConverter> all = new EnumMap<>(UnitOfMeasure.class);
        units().forEach((name, unit) -> {
            try {
                all.put(name, unit.getConverterToAny(unit.getSystemUnit()));
            } catch (IncommensurableException e) {
                throw new IllegalStateException(name + " has no SI unit", e);
            }
        });
        return all;
    }

    private static Map<UnitOfMeasure, Unit<?>> units() {
        Map<UnitOfMeasure, Unit<?>> all = new EnumMap<>(UnitOfMeasure.class);
        geometry(all);
        matter(all);
        motion(all);
        return all;
    }

    private static void geometry(Map<UnitOfMeasure, Unit<?>> all) {
        all.put(UnitOfMeasure.PIECE, AbstractUnit.ONE);
        all.put(UnitOfMeasure.ONE, AbstractUnit.ONE);
        all.put(UnitOfMeasure.PERCENT, Units.PERCENT);
        all.put(UnitOfMeasure.METER, Units.METRE);
        all.put(UnitOfMeasure.MILLIMETER, MILLI(Units.METRE));
        all.put(UnitOfMeasure.CENTIMETER, CENTI(Units.METRE));
        all.put(UnitOfMeasure.INCH, USCustomary.INCH);
        all.put(UnitOfMeasure.FOOT, USCustomary.FOOT);
        all.put(UnitOfMeasure.MILE, USCustomary.MILE);
        all.put(UnitOfMeasure.SQUARE_METER, Units.SQUARE_METRE);
        all.put(UnitOfMeasure.HECTARE, USCustomary.HECTARE);
        all.put(UnitOfMeasure.SQUARE_FOOT, USCustomary.SQUARE_FOOT);
        all.put(UnitOfMeasure.ACRE, USCustomary.ACRE);
        all.put(UnitOfMeasure.CUBIC_METER, Units.CUBIC_METRE);
        all.put(UnitOfMeasure.LITER, Units.LITRE);
        all.put(UnitOfMeasure.US_GALLON, USCustomary.GALLON_LIQUID);
        all.put(UnitOfMeasure.CUBIC_FOOT, USCustomary.CUBIC_FOOT);
        all.put(UnitOfMeasure.CUBIC_YARD, USCustomary.CUBIC_FOOT.multiply(27));
        all.put(UnitOfMeasure.RADIAN, Units.RADIAN);
        all.put(UnitOfMeasure.DEGREE, USCustomary.DEGREE_ANGLE);
    }

    private static void matter(Map<UnitOfMeasure, Unit<?>> all) {
        Unit<?> poundForce = USCustomary.POUND.multiply(Units.METRE_PER_SQUARE_SECOND).multiply(GRAVITY);
        all.put(UnitOfMeasure.KILOGRAM, Units.KILOGRAM);
        all.put(UnitOfMeasure.GRAM, Units.GRAM);
        all.put(UnitOfMeasure.TONNE, Units.KILOGRAM.multiply(1000));
        all.put(UnitOfMeasure.POUND, USCustomary.POUND);
        all.put(UnitOfMeasure.SHORT_TON, USCustomary.TON);
        all.put(UnitOfMeasure.KILOGRAM_PER_CUBIC_METER, Units.KILOGRAM.divide(Units.CUBIC_METRE));
        all.put(UnitOfMeasure.KILOGRAM_PER_LITER, Units.KILOGRAM.divide(Units.LITRE));
        all.put(UnitOfMeasure.POUND_PER_CUBIC_FOOT, USCustomary.POUND.divide(USCustomary.CUBIC_FOOT));
        all.put(UnitOfMeasure.POUND_PER_CUBIC_YARD, USCustomary.POUND.divide(USCustomary.CUBIC_FOOT.multiply(27)));
        all.put(UnitOfMeasure.POUND_PER_US_GALLON, USCustomary.POUND.divide(USCustomary.GALLON_LIQUID));
        all.put(UnitOfMeasure.NEWTON, Units.NEWTON);
        all.put(UnitOfMeasure.KILONEWTON, KILO(Units.NEWTON));
        all.put(UnitOfMeasure.POUND_FORCE, poundForce);
        all.put(UnitOfMeasure.PASCAL, Units.PASCAL);
        all.put(UnitOfMeasure.BAR, Units.PASCAL.multiply(100_000));
        all.put(UnitOfMeasure.MEGAPASCAL, MEGA(Units.PASCAL));
        all.put(UnitOfMeasure.POUND_FORCE_PER_SQUARE_INCH, poundForce.divide(USCustomary.INCH.pow(2)));
        all.put(UnitOfMeasure.NEWTON_METER, Units.NEWTON.multiply(Units.METRE));
        all.put(UnitOfMeasure.FOOT_POUND_FORCE, poundForce.multiply(USCustomary.FOOT));
        all.put(UnitOfMeasure.INCH_POUND_FORCE, poundForce.multiply(USCustomary.INCH));
        all.put(UnitOfMeasure.WATT, Units.WATT);
        all.put(UnitOfMeasure.KILOWATT, KILO(Units.WATT));
        all.put(UnitOfMeasure.HORSEPOWER, USCustomary.HORSEPOWER);
        all.put(UnitOfMeasure.KELVIN, Units.KELVIN);
        all.put(UnitOfMeasure.CELSIUS, Units.CELSIUS);
        all.put(UnitOfMeasure.FAHRENHEIT, USCustomary.FAHRENHEIT);
    }

    private static void motion(Map<UnitOfMeasure, Unit<?>> all) {
        all.put(UnitOfMeasure.SECOND, Units.SECOND);
        all.put(UnitOfMeasure.MINUTE, Units.MINUTE);
        all.put(UnitOfMeasure.HOUR, Units.HOUR);
        all.put(UnitOfMeasure.DAY, Units.DAY);
        all.put(UnitOfMeasure.MONTH, Units.YEAR.divide(12));
        all.put(UnitOfMeasure.YEAR, Units.YEAR);
        all.put(UnitOfMeasure.METER_PER_SECOND, Units.METRE_PER_SECOND);
        all.put(UnitOfMeasure.KILOMETER_PER_HOUR, Units.KILOMETRE_PER_HOUR);
        all.put(UnitOfMeasure.MILE_PER_HOUR, USCustomary.MILE_PER_HOUR);
        all.put(UnitOfMeasure.FOOT_PER_SECOND, USCustomary.FOOT_PER_SECOND);
        all.put(UnitOfMeasure.FOOT_PER_MINUTE, USCustomary.FOOT.divide(Units.MINUTE));
        all.put(UnitOfMeasure.INCH_PER_SECOND, USCustomary.INCH.divide(Units.SECOND));
        all.put(UnitOfMeasure.CUBIC_METER_PER_SECOND, Units.CUBIC_METRE.divide(Units.SECOND));
        all.put(UnitOfMeasure.LITER_PER_MINUTE, Units.LITRE.divide(Units.MINUTE));
        all.put(UnitOfMeasure.US_GALLON_PER_MINUTE, USCustomary.GALLON_LIQUID.divide(Units.MINUTE));
        all.put(UnitOfMeasure.LITER_PER_HOUR, Units.LITRE.divide(Units.HOUR));
        all.put(UnitOfMeasure.US_GALLON_PER_HOUR, USCustomary.GALLON_LIQUID.divide(Units.HOUR));
        all.put(UnitOfMeasure.SQUARE_METER_PER_SECOND, Units.SQUARE_METRE.divide(Units.SECOND));
        all.put(UnitOfMeasure.HECTARE_PER_HOUR, USCustomary.HECTARE.divide(Units.HOUR));
        all.put(UnitOfMeasure.ACRE_PER_HOUR, USCustomary.ACRE.divide(Units.HOUR));
        all.put(UnitOfMeasure.KILOGRAM_PER_SECOND, Units.KILOGRAM.divide(Units.SECOND));
        all.put(UnitOfMeasure.TONNE_PER_HOUR, Units.KILOGRAM.multiply(1000).divide(Units.HOUR));
        all.put(UnitOfMeasure.SHORT_TON_PER_HOUR, USCustomary.TON.divide(Units.HOUR));
    }
}

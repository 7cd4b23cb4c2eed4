package fencerow.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that all quantity records keep. */
class QuantityTest {

    static List<Class<? extends Quantity>> records() {
        return List.of(
                Angle.class, Area.class, Density.class, Flow.class, Force.class, Length.class, Mass.class,
                MassRate.class, Power.class, Pressure.class, Ratio.class, Speed.class, Temperature.class, Time.class,
                Volume.class, WorkRate.class);
    }

    private static List<Method> factories(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> method.getName().matches("of[A-Z].*"))
                .toList();
    }

    /** US units to SI units and back, and the same for every other unit of the record. */
    @ParameterizedTest
    @MethodSource("records")
    void everyFactoryHasItsAccessorAndTheyAgree(Class<? extends Quantity> type) throws ReflectiveOperationException {
        assertTrue(factories(type).size() >= 2, () -> type + " has no second unit");
        Random random = new Random(16);
        for (Method factory : factories(type)) {
            Method accessor = type.getMethod("to" + factory.getName().substring(2));
            for (int i = 0; i < 100; i++) {
                double value = random.nextDouble() * 1000;
                double back = (double) accessor.invoke(factory.invoke(null, value));
                assertEquals(value, back, 1e-9, () -> "seed 16: " + factory.getName());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("records")
    void anAmountHoldsTheSame(Class<? extends Quantity> type) throws ReflectiveOperationException {
        Quantity quantity = (Quantity) factories(type).get(0).invoke(null, 12.5);
        Object back = type.getMethod("of", Amount.class).invoke(null, quantity.amount());
        assertEquals(quantity, back);
    }

    @ParameterizedTest
    @MethodSource("records")
    void refusesWhatIsNoNumberAndWhatMeasuresSomethingElse(Class<? extends Quantity> type)
            throws ReflectiveOperationException {
        Constructor<? extends Quantity> made = type.getConstructor(double.class);
        for (double wrong : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertInstanceRefused(() -> made.newInstance(wrong), "finite");
        }
        Method of = type.getMethod("of", Amount.class);
        assertInstanceRefused(() -> of.invoke(null, Amount.count(3)), "count");
    }

    private interface Reflective {
        void run() throws ReflectiveOperationException;
    }

    private static void assertInstanceRefused(Reflective call, String word) {
        InvocationTargetException refused = assertThrows(InvocationTargetException.class, call::run);
        assertTrue(refused.getCause() instanceof IllegalArgumentException);
        assertTrue(refused.getCause().getMessage().contains(word), refused.getCause().getMessage());
    }

    @Test
    void aSpreadHoldsItsEndsAndNothingBeyond() {
        Spread<Length> spread = Spread.of(Length.ofFeet(2), Length.ofFeet(3));
        assertTrue(spread.contains(Length.ofFeet(2)) && spread.contains(Length.ofFeet(3)));
        assertFalse(spread.contains(Length.ofFeet(3.1)) || spread.contains(Mass.ofKilograms(0.7)));
        assertFalse(spread.isExact());
        assertTrue(Spread.exactly(Length.ofFeet(2)).isExact());
        assertEquals(Length.ofFeet(2).amount(), spread.amounts().low());
    }

    @Test
    void aSpreadIsNeitherUpsideDownNorMixed() {
        assertThrows(IllegalArgumentException.class, () -> Spread.of(Length.ofFeet(3), Length.ofFeet(2)));
        assertThrows(IllegalArgumentException.class,
                () -> Spread.of(Length.ofFeet(3).amount(), Mass.ofPounds(30).amount()));
    }
}

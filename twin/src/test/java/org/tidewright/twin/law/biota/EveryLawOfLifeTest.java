package org.tidewright.twin.law.biota;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.nutrient.ActivatedCarbon;
import org.tidewright.twin.law.nutrient.CarbonDosing;
import org.tidewright.twin.law.nutrient.Denitrification;
import org.tidewright.twin.law.nutrient.Limitation;
import org.tidewright.twin.law.nutrient.MicroalgalBloom;
import org.tidewright.twin.law.nutrient.Nitrification;
import org.tidewright.twin.law.nutrient.Nitrifiers;
import org.tidewright.twin.law.nutrient.NitrogenAlkalinity;
import org.tidewright.twin.law.nutrient.NutrientBox;
import org.tidewright.twin.law.nutrient.PhosphateAdsorption;
import org.tidewright.twin.law.nutrient.Remineralisation;
import org.tidewright.twin.law.nutrient.Skimming;
import org.tidewright.twin.law.nutrient.Straining;

/** What holds for every law of nutrients, animals and algae whose arguments are numbers. */
class EveryLawOfLifeTest {
    private static final List<Class<?>> LAWS = List.of(
            ActivatedCarbon.class,
            CarbonDosing.class,
            Carrion.class,
            Denitrification.class,
            Digestion.class,
            FishGrowth.class,
            Hunger.class,
            Limitation.class,
            MacroalgaeGrowth.class,
            MicroalgalBloom.class,
            Nitrification.class,
            Nitrifiers.class,
            NitrogenAlkalinity.class,
            NutrientBox.class,
            PhosphateAdsorption.class,
            Remineralisation.class,
            Skimming.class,
            StockingLoad.class,
            Straining.class);

    /** What the methods of an object are tried on. */
    private static final Map<Class<?>, Object> OBJECTS = Map.of(
            FishGrowth.class, new FishGrowth(0.168, 1e-8, 2e-5, 3),
            Nitrifiers.class, Nitrifiers.NITRITE_OXIDISERS,
            NutrientBox.class, new NutrientBox(1e-9, 0.2, 1e-7));

    static List<Method> laws() {
        return LAWS.stream()
                .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
                .filter(method -> Modifier.isPublic(method.getModifiers())
                        && method.getReturnType() == double.class
                        && method.getParameterCount() > 0
                        && Stream.of(method.getParameterTypes()).allMatch(type -> type == double.class))
                .toList();
    }

    @Test
    void thereAreMany() {
        assertThat(laws()).hasSizeGreaterThan(45);
    }

    /** Nothing at all, next to nothing, and a thousand billion of everything. */
    @ParameterizedTest
    @MethodSource("laws")
    void answersWithAFiniteNumberOrRefuses(Method law) {
        SeededCases.check(400, draw -> {
            Object[] arguments = units(law).map(unit -> drawn(draw, unit)).toArray();
            try {
                assertThat(answer(law, arguments))
                        .as(Arrays.toString(arguments))
                        .isFinite();
            } catch (InvocationTargetException thrown) {
                assertThat(thrown.getCause()).isInstanceOf(IllegalArgumentException.class);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("laws")
    void refusesWhatIsNotANumber(Method law) throws IllegalAccessException {
        Object[] sound = sound(law);
        for (int i = 0; i < sound.length; i++) {
            for (double nonsense : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
                Object[] arguments = sound.clone();
                arguments[i] = nonsense;
                assertThatThrownBy(() -> answer(law, arguments))
                        .as(law + " with " + nonsense + " at " + i)
                        .hasCauseInstanceOf(IllegalArgumentException.class);
            }
        }
    }

    private static double drawn(Draw draw, String unit) {
        return switch (unit) {
            case "degC" -> draw.between(-2, 40);
            case "1" -> draw.oneOf(0.0, 1e-9, 0.3, 1.0, 1.1, 3.0, 20.0, 1e12);
            default -> draw.oneOf(0.0, Double.MIN_VALUE, 1e-300, 1e-12, 1e-9, 1e-6, 1e-3, 0.1, 1.0, 10.0, 1e12);
        };
    }

    /** Arguments that the law answers. */
    private static Object[] sound(Method law) throws IllegalAccessException {
        for (double share : new double[] {1, 0.5}) {
            Object[] arguments = units(law)
                    .map(unit -> switch (unit) {
                        case "degC" -> 20.0;
                        case "s" -> 3600.0;
                        case "1" -> share;
                        default -> 1e-6;
                    })
                    .toArray();
            try {
                assertThat(answer(law, arguments)).isFinite();
                return arguments;
            } catch (InvocationTargetException refused) {
                assertThat(refused.getCause()).isInstanceOf(IllegalArgumentException.class);
            }
        }
        throw new AssertionError(law + " answers none of the arguments tried");
    }

    private static Stream<String> units(Method law) {
        return Stream.of(law.getParameters())
                .map(parameter -> Objects.requireNonNull(parameter.getAnnotation(Unit.class))
                        .value());
    }

    private static double answer(Method law, Object[] arguments)
            throws InvocationTargetException, IllegalAccessException {
        @Nullable Object object = OBJECTS.get(law.getDeclaringClass());
        return (double) Objects.requireNonNull(law.invoke(object, arguments));
    }
}

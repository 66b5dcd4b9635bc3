package org.tidewright.seawater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.testkit.SeededCases;

/** What holds for every public law of temperature, salinity or both, found by looking through the module's classes. */
class EveryLawTest {
    static List<Method> laws() throws IOException, URISyntaxException {
        Path classes = Path.of(Density.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        try (Stream<Path> files = Files.walk(classes)) {
            return files.filter(file -> file.toString().endsWith(".class"))
                    .map(file -> classes.relativize(file).toString())
                    .filter(name -> !name.contains("-info") && !name.contains("range"))
                    .map(name -> name.replace(".class", "").replace('/', '.').replace('\\', '.'))
                    .map(EveryLawTest::named)
                    .filter(type -> Modifier.isPublic(type.getModifiers()))
                    .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
                    .filter(EveryLawTest::isOfTemperatureAndSalinity)
                    .toList();
        }
    }

    @Test
    void thereAreMany() throws IOException, URISyntaxException {
        assertThat(laws()).hasSizeGreaterThan(40);
    }

    /** Whatever lies within {@link Bounds} gets a finite answer or is refused; never NaN, never infinity. */
    @ParameterizedTest
    @MethodSource("laws")
    void answersWithAFiniteNumberOrRefuses(Method law) {
        SeededCases.check(300, draw -> {
            Object[] arguments = Arrays.stream(law.getParameters())
                    .map(parameter -> isTemperature(parameter)
                            ? draw.between(Bounds.COLDEST_WATER, Bounds.HOTTEST_WATER)
                            : draw.between(0, Bounds.SALTIEST_WATER))
                    .toArray();
            try {
                assertThat((double) law.invoke(null, arguments)).isFinite();
            } catch (InvocationTargetException thrown) {
                assertThat(thrown.getCause()).isInstanceOf(IllegalArgumentException.class);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("laws")
    void refusesWhatIsNotANumber(Method law) {
        // Scales of temperature are plain arithmetic: what is no number stays none, as everywhere in Java.
        if (law.getDeclaringClass().getPackageName().endsWith(".unit")) {
            return;
        }
        Object[] arguments = new Object[law.getParameterCount()];
        for (int i = 0; i < arguments.length; i++) {
            Arrays.fill(arguments, 20.0);
            arguments[i] = Double.NaN;
            Object[] each = arguments.clone();
            assertThatThrownBy(() -> law.invoke(null, each))
                    .as(law + " with NaN at " + i)
                    .hasCauseInstanceOf(IllegalArgumentException.class);
        }
    }

    private static Class<?> named(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException missing) {
            throw new IllegalStateException(missing);
        }
    }

    private static boolean isOfTemperatureAndSalinity(Method method) {
        return Modifier.isPublic(method.getModifiers())
                && Modifier.isStatic(method.getModifiers())
                && method.getReturnType() == double.class
                && method.getParameterCount() > 0
                && Arrays.stream(method.getParameters())
                        .allMatch(parameter -> isTemperature(parameter) || isSalinity(parameter));
    }

    private static boolean isTemperature(Parameter parameter) {
        return parameter.getType() == double.class && "degC".equals(unit(parameter));
    }

    private static boolean isSalinity(Parameter parameter) {
        return parameter.getType() == double.class
                && "1".equals(unit(parameter))
                && parameter.getName().equals("practicalSalinity");
    }

    private static String unit(Parameter parameter) {
        Unit unit = parameter.getAnnotation(Unit.class);
        return unit == null ? "" : unit.value();
    }
}

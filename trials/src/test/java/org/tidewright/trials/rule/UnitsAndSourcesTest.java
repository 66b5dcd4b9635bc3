package org.tidewright.trials.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every number says its unit, and every law where it comes from. */
class UnitsAndSourcesTest {
    private static final String SEAWATER = "seawater/src/main/java/org/tidewright/seawater";
    private static final String TWIN = "twin/src/main/java/org/tidewright/twin/";
    private static final List<String> COMPUTING_PARTS_OF_TWIN =
            List.of("law", "contract", "mechanism", "tank", "run", "rehearsal");

    @Test
    void everyPublicNumberOfSeawaterSaysItsUnit() {
        new FrozenList("seawater-without-unit.txt").check(numbers(SEAWATER).withoutUnit());
    }

    @Test
    void everyPublicNumberOfTheTwinSaysItsUnit() {
        String[] folders =
                COMPUTING_PARTS_OF_TWIN.stream().map(part -> TWIN + part).toArray(String[]::new);
        new FrozenList("twin-without-unit.txt").check(numbers(folders).withoutUnit());
    }

    /** The package {@code range} holds no laws: it refuses arguments. */
    @Test
    void everyFunctionOfSeawaterNamesItsSourceAndWhereItHolds() {
        List<PublicNumbers.Function> functions = numbers(SEAWATER).functions().stream()
                .filter(PublicNumbers.Function::isStatic)
                .filter(function -> !Checkout.name(function.itself().file()).contains("/range/"))
                .toList();
        assertThat(functions).as("functions found").isNotEmpty();
        List<Offence> offences = Stream.of("source", "validity")
                .flatMap(tag -> functions.stream()
                        .filter(function -> !function.tags().contains(tag))
                        .map(function -> function.lacks(tag)))
                .toList();
        new FrozenList("seawater-without-source.txt").check(offences);
    }

    @Test
    void everyLawOfTheTwinNamesItsSource() {
        List<PublicNumbers.Function> functions = numbers(TWIN + "law").functions();
        assertThat(functions).as("functions found").isNotEmpty();
        List<Offence> offences = functions.stream()
                .filter(function -> !function.tags().contains("source")
                        && !function.typeTags().contains("source"))
                .map(function -> function.lacks("source"))
                .toList();
        new FrozenList("laws-without-source.txt").check(offences);
    }

    private static PublicNumbers numbers(String... folders) {
        return PublicNumbers.in(Stream.of(folders)
                .flatMap(folder -> Checkout.javaFiles(Checkout.root().resolve(folder)).stream())
                .toList());
    }
}

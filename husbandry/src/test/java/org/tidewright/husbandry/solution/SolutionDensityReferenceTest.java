package org.tidewright.husbandry.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.density.Density;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;

class SolutionDensityReferenceTest {
    private static final String COLUMN = "density_kg_per_m3";

    private static ReferenceTable table(String name) {
        return ReferenceTable.read(SolutionDensityReferenceTest.class, "/reference/solution/" + name);
    }

    @Test
    void densitiesAreTheHandbooks() {
        for (ReferenceTable.Row row : table("density_crc.csv").rows()) {
            double perCent = row.number("mass_percent");
            double density = SolutionDensity.ofShares(Map.of(Salt.valueOf(row.text("salt")), perCent / 100), 20);
            Close.absolute(row, COLUMN, density, perCent <= 10 ? 1.5 : 2.6);
        }
    }

    @Test
    void coefficientsAreThoseOfAnotherTyping() {
        for (ReferenceTable.Row row : table("density_thermo.csv").rows()) {
            double density = SolutionDensity.ofShares(
                    Map.of(Salt.valueOf(row.text("salt")), row.number("mass_share")), row.number("temperature_c"));
            Close.absolute(row, COLUMN, density, 0.01);
        }
    }

    @ParameterizedTest
    @EnumSource(value = Salt.class, mode = EnumSource.Mode.EXCLUDE, names = "CALCIUM_HYDROXIDE")
    void theRoomOfEverySaltIsKnownButLimes(Salt salt) {
        assertThat(SolutionDensity.knows(salt)).isTrue();
        assertThat(SolutionDensity.knows(Salt.CALCIUM_HYDROXIDE)).isFalse();
    }

    /** Shares of the mass and amounts per volume are two ways to say one solution. */
    @Test
    void volumeAndMassAgree() {
        SeededCases.check(300, draw -> {
            Salt salt = draw.oneOf(Salt.CALCIUM_CHLORIDE, Salt.SODIUM_CARBONATE, Salt.MAGNESIUM_CHLORIDE);
            Salt other = draw.oneOf(Salt.MAGNESIUM_SULFATE, Salt.POTASSIUM_CHLORIDE);
            double share = draw.between(0.01, 0.15);
            double otherShare = draw.between(0.01, 0.1);
            double temperature = draw.between(0, 40);
            double density = SolutionDensity.ofShares(Map.of(salt, share, other, otherShare), temperature);
            Solution solution = Solution.of(salt, share * density / salt.dryMolarMass())
                    .and(Solution.of(other, otherShare * density / other.dryMolarMass()));
            assertThat(SolutionDensity.of(solution, temperature)).isCloseTo(density, within(1e-6));
            double water = (1 - share - otherShare) * density;
            assertThat(SolutionDensity.water(solution, temperature)).isCloseTo(water, within(1e-6));
        });
    }

    @Test
    void nothingDissolvedIsWater() {
        assertThat(SolutionDensity.of(Solution.of(Salt.SODIUM_CARBONATE, 1e-9), 20))
                .isCloseTo(Density.ofSeawater(20, 0), within(1e-6));
    }
}

package org.tidewright.seawater.ions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MajorIonTest {
    /** Millero et al. 2008, table 4, the column of mass fractions (from memory). */
    private static final Map<MajorIon, Double> MASS_FRACTIONS = new EnumMap<>(MajorIon.class);

    static {
        MASS_FRACTIONS.put(MajorIon.SODIUM, 0.3065958);
        MASS_FRACTIONS.put(MajorIon.MAGNESIUM, 0.0365055);
        MASS_FRACTIONS.put(MajorIon.CALCIUM, 0.0117186);
        MASS_FRACTIONS.put(MajorIon.POTASSIUM, 0.0113495);
        MASS_FRACTIONS.put(MajorIon.STRONTIUM, 0.0002260);
        MASS_FRACTIONS.put(MajorIon.CHLORIDE, 0.5503396);
        MASS_FRACTIONS.put(MajorIon.SULFATE, 0.0771319);
        MASS_FRACTIONS.put(MajorIon.BICARBONATE, 0.0029805);
        MASS_FRACTIONS.put(MajorIon.BROMIDE, 0.0019134);
        MASS_FRACTIONS.put(MajorIon.CARBONATE, 0.0004078);
        MASS_FRACTIONS.put(MajorIon.BORATE, 0.0002259);
        MASS_FRACTIONS.put(MajorIon.FLUORIDE, 0.0000369);
        MASS_FRACTIONS.put(MajorIon.HYDROXIDE, 0.0000038);
        MASS_FRACTIONS.put(MajorIon.BORIC_ACID, 0.0005527);
        MASS_FRACTIONS.put(MajorIon.CARBON_DIOXIDE, 0.0000121);
    }

    @Test
    void massFractionsAreThoseTheTablePrintsBesideTheMoleFractions() {
        assertThat(MASS_FRACTIONS).hasSize(MajorIon.values().length);
        MASS_FRACTIONS.forEach((ion, printed) ->
                assertThat(ion.massFraction()).as(ion.formula()).isCloseTo(printed, within(1e-7)));
    }

    @Test
    void fractionsAddUpToOneAndChargesToNone() {
        assertThat(Arrays.stream(MajorIon.values())
                        .mapToDouble(MajorIon::moleFraction)
                        .sum())
                .isCloseTo(1, within(1e-12));
        assertThat(Arrays.stream(MajorIon.values())
                        .mapToDouble(MajorIon::massFraction)
                        .sum())
                .isCloseTo(1, within(1e-7));
        // The table rounds to 1e-7 of a mole.
        assertThat(Arrays.stream(MajorIon.values())
                        .mapToDouble(ion -> ion.charge() * ion.moleFraction())
                        .sum())
                .isCloseTo(0, within(2e-7));
    }

    /** Dickson, Sabine and Christian 2007, ch. 5, table of the composition at S = 35, from memory; last digit. */
    @Test
    void amountsAtThirtyFiveAreThoseOfTheHandbook() {
        assertThat(MajorIon.SODIUM.perMass(35)).isCloseTo(0.46897, within(1e-5));
        assertThat(MajorIon.MAGNESIUM.perMass(35)).isCloseTo(0.05282, within(1e-5));
        assertThat(MajorIon.CALCIUM.perMass(35)).isCloseTo(0.01028, within(1e-5));
        assertThat(MajorIon.POTASSIUM.perMass(35)).isCloseTo(0.01021, within(1e-5));
        assertThat(MajorIon.CHLORIDE.perMass(35)).isCloseTo(0.54587, within(2e-5));
        assertThat(MajorIon.SULFATE.perMass(35)).isCloseTo(0.02824, within(1e-5));
        assertThat(MajorIon.BROMIDE.perMass(35)).isCloseTo(0.00084, within(1e-5));
        assertThat(MajorIon.FLUORIDE.perMass(35)).isCloseTo(0.00007, within(1e-5));
    }

    /** By hand: 0.0102821 mol/kg x 40.078 g/mol x 1.023341 kg/L = 421.7 mg/L; boron 0.0004151 x 10.811 x 1.023341. */
    @Test
    void kitsReadThemInMilligramsPerLitre() {
        assertThat(MajorIon.CALCIUM.massPerVolume(35, 25)).isCloseTo(421.7, within(0.05));
        assertThat(MajorIon.MAGNESIUM.massPerVolume(35, 25)).isCloseTo(1313.6, within(0.5));
        assertThat(MajorIon.POTASSIUM.massPerVolume(35, 25)).isCloseTo(408.4, within(0.5));
        assertThat(MajorIon.boron(35, 25)).isCloseTo(4.592, within(0.005));
        assertThat(MajorIon.CALCIUM.relativeToSalinity(421.7, 35, 25)).isCloseTo(1, within(2e-4));
        assertThat(MajorIon.CALCIUM.relativeToSalinity(380, 35, 25)).isCloseTo(0.901, within(1e-3));
    }

    @Test
    void whatCannotBeMeantIsRefused() {
        assertThatThrownBy(() -> MajorIon.CALCIUM.relativeToSalinity(-1, 35, 25))
                .hasMessageContaining("Ca²⁺");
        assertThatThrownBy(() -> MajorIon.CALCIUM.relativeToSalinity(420, 0, 25))
                .hasMessageContaining("salinity");
        assertThatThrownBy(() -> MajorIon.SODIUM.perMass(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}

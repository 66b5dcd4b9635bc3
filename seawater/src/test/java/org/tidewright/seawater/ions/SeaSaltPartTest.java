package org.tidewright.seawater.ions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.testkit.SeededCases;

class SeaSaltPartTest {
    /** By hand: amount times molar mass times 1023.341 kg/m^3, the density at S = 35 and 25 degC of UNESCO 1983. */
    @Test
    void readingsOfStandardSeawaterAreWhatKeepersAimAt() {
        assertThat(TestedElement.CALCIUM.reading(25, 35)).isCloseTo(0.0102821 * 40.078 * 1023.341, within(0.002));
        assertThat(TestedElement.CALCIUM.reading(25, 35)).isCloseTo(422, within(0.5));
        assertThat(TestedElement.MAGNESIUM.reading(25, 35)).isCloseTo(1314, within(0.5));
        assertThat(TestedElement.POTASSIUM.reading(25, 35)).isCloseTo(408, within(0.5));
        assertThat(TestedElement.STRONTIUM.reading(25, 35)).isCloseTo(9.070e-5 * 87.62 * 1023.341, within(5e-3));
    }

    /** Uppström 1974: 0.232 mg/kg of boron per unit of chlorinity, S / 1.80655; 4.495 mg/kg at S = 35. */
    @Test
    void boronCountsBothItsFormsAndIsNearUppstroms() {
        assertThat(TestedElement.BORON.massPerMass(35)).isCloseTo(0.232e-3 * 35 / 1.80655, within(0.01e-3));
        assertThat(TestedElement.BORON.amount(35))
                .isCloseTo(MajorIon.BORATE.amount(35) + MajorIon.BORIC_ACID.amount(35), within(1e-18));
        assertThat(TestedElement.BORON.ions()).containsExactly(MajorIon.BORATE, MajorIon.BORIC_ACID);
    }

    /** Morris and Riley 1966: 0.1400 g of sulfate per g of chlorinity, a third of its mass sulfur (32.065 of 96.063). */
    @Test
    void sulfateIsNearMorrisAndRileysAndItsSulfurAThird() {
        assertThat(TestedElement.SULFATE.massPerMass(35)).isCloseTo(0.1400 * 35 / 1.80655, within(0.0005));
        assertThat(TestedElement.SULFUR.reading(25, 35) / TestedElement.SULFATE.reading(25, 35))
                .isCloseTo(32.065 / 96.0626, within(1e-9));
        assertThat(TestedElement.SULFATE.amount(35) / TotalConcentrations.sulfate(35))
                .isCloseTo(1, within(1e-5));
    }

    /** 0.0102821 by Millero et al. 2008, 0.0102846 by Riley and Tongudai 1967. */
    @Test
    void calciumIsTwoHundredthsOfAPercentLessThanInTheCarbonDioxideSystem() {
        double there =
                TotalConcentrations.ofSeawater(35, BoronRatio.UPPSTROM_1974).calcium();
        assertThat(there).isCloseTo(0.0102846, within(5e-8));
        assertThat(MajorIon.CALCIUM.amount(35)).isCloseTo(0.0102821, within(5e-8));
    }

    /** At S = 38 the sea has 38/35 of the 422 mg/L and a denser litre: 422 mg/L there is 8 % too low. */
    @Test
    void calciumThatFitsThirtyFiveIsTooLowForThirtyEight() {
        double reading = TestedElement.CALCIUM.reading(25, 35);
        double density35 = 1023.341235; // EOS-80, another typing
        double density38 = 1025.610502; // the same
        assertThat(TestedElement.CALCIUM.shareOfNatural(reading, 25, 35)).isCloseTo(1, within(1e-15));
        assertThat(TestedElement.CALCIUM.shareOfNatural(reading, 25, 38))
                .isCloseTo(35 * density35 / (38 * density38), within(1e-6));
        assertThat(TestedElement.CALCIUM.shareOfNatural(0.0102821, 35)).isCloseTo(1, within(5e-6));
        assertThat(TestedElement.CALCIUM.salinityReading(reading, 25)).isCloseTo(35, within(1e-12));
    }

    @Test
    void everyReadingAndAmountLeadsBackToItsSalinity() {
        List<SeaSaltPart> parts = new ArrayList<>(List.of(MajorIon.values()));
        parts.addAll(List.of(TestedElement.values()));
        SeededCases.check(draw -> {
            SeaSaltPart part = draw.oneOf(parts.toArray(SeaSaltPart[]::new));
            double t = draw.between(0, 40);
            double s = draw.between(0, 120);
            assertThat(part.salinityReading(part.reading(t, s), t)).isCloseTo(s, within(1e-12));
            assertThat(part.salinityHolding(part.amount(s))).isCloseTo(s, within(1e-12));
            double amount = draw.between(0, 0.1);
            assertThat(part.fromReading(part.toReading(amount, t, s), t, s)).isCloseTo(amount, within(1e-15));
        });
    }

    @Test
    void massesOfAllConstituentsAddUpToTheSalt() {
        SeededCases.check(draw -> {
            double s = draw.between(0, 120);
            double all = 0;
            for (MajorIon ion : MajorIon.values()) {
                all += ion.massPerMass(s);
            }
            // Millero et al. 2008; the printed mean molar mass has nine digits.
            assertThat(all).isCloseTo(35.16504 / 35 * s, within(2e-7));
        });
    }

    @Test
    void refusesWhatCannotBeMeant() {
        assertThatThrownBy(() -> MajorIon.CALCIUM.amount(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MajorIon.CALCIUM.fromReading(-1, 25, 35))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("reading is -1.0 mg/L; it must be 0 or more and finite");
        assertThatThrownBy(() -> MajorIon.CALCIUM.salinityReading(422_000, 25))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reading 422000.0 mg/L is outside 0.0 to ")
                .hasMessageContaining("is it in ug/L?");
        assertThatThrownBy(() -> MajorIon.CALCIUM.salinityHolding(10.28))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is it in mmol/kg or per volume?");
        assertThatThrownBy(() -> MajorIon.CALCIUM.shareOfNatural(0.01, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("practical salinity is 0.0; it must be greater than 0 and finite");
        assertThatThrownBy(() -> MajorIon.CALCIUM.shareOfNatural(422, 298.15, 35))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MajorIon.CALCIUM.toReading(Double.NaN, 25, 35))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

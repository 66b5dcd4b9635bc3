package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DESIGN_FLOW;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES_PER_HOUR;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.MILLIMETRES;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.TEETH;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers of the {@link ExampleSystem} unless another source stands beside them. */
class WeirTest {
    private static final List<Weir> EVERY_KIND = List.of(
            new FrancisWeir(0.40, 2),
            new FrancisWeir(0.40, 0),
            new RehbockWeir(0.40, 0.55),
            TEETH,
            new CombWeir(33, 0.006, 0.030, 0.59, 0.40));

    @Test
    void aSmoothCrestNeedsTheHeadFrancisGives() {
        assertThat(new FrancisWeir(0.40, 2).head(DESIGN_FLOW)).isCloseTo(9.651 * MILLIMETRES, FOUR_DIGITS);
    }

    @Test
    void aSmoothCrestNeedsTheHeadRehbockGives() {
        assertThat(new RehbockWeir(0.40, 0.55).head(DESIGN_FLOW)).isCloseTo(8.630 * MILLIMETRES, FOUR_DIGITS);
    }

    @Test
    void aCentimetreOfSmoothCrestPassesWhatTheExampleSays() {
        FrancisWeir centimetre = new FrancisWeir(0.01, 0);
        assertThat(centimetre.flow(10 * MILLIMETRES)).isCloseTo(66.24 * LITRES_PER_HOUR, FOUR_DIGITS);
        assertThat(centimetre.flow(15 * MILLIMETRES)).isCloseTo(121.7 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void theTeethNeedTheHeadOfTheExampleCleanAndHalfBlocked() {
        assertThat(TEETH.head(DESIGN_FLOW)).isCloseTo(15.94 * MILLIMETRES, FOUR_DIGITS);
        assertThat(TEETH.blocked(0.5).head(DESIGN_FLOW)).isCloseTo(25.31 * MILLIMETRES, FOUR_DIGITS);
    }

    @Test
    void theTeethAreBrimfulAtTheFlowOfTheExample() {
        assertThat(TEETH.brimfulFlow()).isCloseTo(6452 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void theTeethOfTheExampleLeaveHalfOfA40CentimetreCombOpen() {
        // 33 x 6 mm = 198 mm of 400 mm, by hand.
        assertThat(TEETH.openShare(0.40)).isCloseTo(0.495, within(1e-12));
    }

    @Test
    void aClosedCombAboveItsTeethFlowsLikeARowOfTallHoles() {
        // By hand: (2/3) 0.59 sqrt(2 x 9.80665) 0.198 = 0.344908; 0.045^1.5 - 0.015^1.5 = 9.545942e-3 - 1.837117e-3.
        assertThat(TEETH.flow(0.045)).isCloseTo(0.344908 * 7.708825e-3, withinPercentage(0.001));
    }

    @Test
    void anOpenCombAboveItsTeethAddsAWeirOfItsFullLength() {
        CombWeir open = new CombWeir(33, 0.006, 0.030, 0.59, 0.40);
        // By hand: 1.84 x 0.40 x 0.015^1.5 = 0.736 x 1.837117e-3.
        assertThat(open.flow(0.045) - TEETH.flow(0.045)).isCloseTo(1.352118e-3, withinPercentage(0.001));
    }

    @Test
    void aCombAboutToFillIsBrimfulWhateverTheLastDigitSays() {
        for (int slots = 1; slots < 200; slots++) {
            CombWeir comb = new CombWeir(slots, 0.006, 0.030, 0.59, 0);
            assertThat(comb.head(Math.nextDown(comb.brimfulFlow()))).isCloseTo(0.030, within(1e-15));
            assertThat(comb.head(comb.brimfulFlow())).isCloseTo(0.030, within(1e-15));
            assertThat(comb.head(Math.nextUp(comb.brimfulFlow()))).isCloseTo(0.030, within(1e-15));
        }
    }

    @Test
    void aDryCrestPassesNothing() {
        assertThat(EVERY_KIND).allSatisfy(weir -> {
            assertThat(weir.flow(0)).isZero();
            assertThat(weir.flow(-0.1)).isZero();
            assertThat(weir.head(0)).isZero();
        });
    }

    @Test
    void aHeadThatIsNotANumberIsRefused() {
        assertThat(EVERY_KIND).allSatisfy(weir -> {
            assertThatThrownBy(() -> weir.flow(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> weir.head(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        });
    }

    @Test
    void nonsenseIsRefusedWithValueUnitAndRange() {
        assertThatThrownBy(() -> new FrancisWeir(-0.4, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("length of the crest is -0.4 m; it must be greater than 0 and finite");
        assertThatThrownBy(() -> new FrancisWeir(0.4, 3)).hasMessageContaining("outside 0.0 to 2.0");
        assertThatThrownBy(() -> TEETH.blocked(1)).hasMessageContaining("less than 1");
        assertThatThrownBy(() -> TEETH.head(-1e-3)).hasMessageContaining("m^3/s");
    }

    @Test
    void aquariumFilmsAreSaidToLieOutsideWhatWasMeasured() {
        assertThat(EVERY_KIND)
                .allSatisfy(weir -> assertThat(weir.withinStatedRange(0.012)).isFalse());
        assertThat(new FrancisWeir(0.40, 2).withinStatedRange(0.10)).isTrue();
        assertThat(new RehbockWeir(0.40, 0.55).withinStatedRange(0.05)).isTrue();
        assertThat(new RehbockWeir(0.40, 0.05).withinStatedRange(0.05)).isFalse();
    }

    @Test
    void theTwoFormulasForASmoothCrestDifferByLessThanTheBandPutOnThem() {
        Weir francis = new FrancisWeir(0.40, 2);
        Weir rehbock = new RehbockWeir(0.40, 0.55);
        double head = 9 * MILLIMETRES;
        assertThat(rehbock.flow(head) / francis.flow(head) - 1)
                .isBetween(0.05, francis.relativeError() + rehbock.relativeError());
    }
}

package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.testkit.SeededCases;

class NeighboursTest {
    private static final CoralTraits TORCH = species("Euphyllia glabrescens", 0.20, Set.of());
    private static final CoralTraits HAMMER = species("Fimbriaphyllia ancora", 0.12, Set.of());

    private static CoralTraits species(String name, double reach, Set<String> unharmed) {
        return new CoralTraits(
                name,
                true,
                Ranged.between(80e-6, 200e-6),
                FlowClass.MEDIUM,
                reach,
                unharmed,
                Ranged.between(0.010, 0.025),
                Ranged.exactly(0),
                false);
    }

    private static Colony colony(CoralTraits traits, double radius, double x, double y, double height) {
        return new Colony("a coral", 1, radius, traits, new Place(x, y, height));
    }

    /** Centres 50 cm apart, radii 6 and 4 cm: a gap of 40. Reach 20, 5 cm, and half of 17.5 mm a year from both sides. */
    @Test
    void theGapNeededIsTheLongerReachFiveCentimetresAndAYearOfBothsGrowth() {
        Neighbours pair = Neighbours.of(colony(TORCH, 0.06, 0, 0, 0), colony(HAMMER, 0.04, 0.3, 0.4, 0));
        assertThat(pair.gap()).isCloseTo(0.40, within(1e-12));
        assertThat(pair.needed()).isCloseTo(0.20 + 0.05 + 0.0175, within(1e-12));
        assertThat(pair.spare()).isCloseTo(0.1325, within(1e-12));
        assertThat(pair.standing()).isEqualTo(Neighbours.Standing.APART);
        assertThat(pair.untilInReach()).isCloseTo(0.20 / 0.0175, within(1e-9));
    }

    @Test
    void theStandingFollowsTheGap() {
        double[] gaps = {-0.01, 0.10, 0.22, 0.255, 0.27};
        Neighbours.Standing[] standings = {
            Neighbours.Standing.TOUCHING,
            Neighbours.Standing.IN_REACH,
            Neighbours.Standing.CLOSE,
            Neighbours.Standing.GROWING_CLOSE,
            Neighbours.Standing.APART
        };
        for (int i = 0; i < gaps.length; i++) {
            Neighbours pair = Neighbours.of(colony(TORCH, 0.06, 0, 0, 0), colony(HAMMER, 0.04, 0.1 + gaps[i], 0, 0));
            assertThat(pair.standing()).isEqualTo(standings[i]);
        }
    }

    @Test
    void oneAboveTheOtherIsAsFarAwayAsItIsHigh() {
        Neighbours pair = Neighbours.of(colony(TORCH, 0.06, 0, 0, 0), colony(HAMMER, 0.04, 0.03, 0, 0.35));
        assertThat(pair.gap()).isCloseTo(0.35, within(1e-12));
    }

    @Test
    void theSameGenusMayTouch() {
        Neighbours pair = Neighbours.of(colony(TORCH, 0.06, 0, 0, 0), colony(TORCH, 0.04, 0.05, 0, 0));
        assertThat(pair.standing()).isEqualTo(Neighbours.Standing.APART);
        assertThat(pair.needed()).isZero();
    }

    @Test
    void otherGeneraMayTouchOnlyWhereNeitherHarmsTheOther() {
        CoralTraits tolerant = species("Fimbriaphyllia ancora", 0.12, Set.of("Euphyllia"));
        CoralTraits mutual = species("Euphyllia glabrescens", 0.20, Set.of("Fimbriaphyllia"));
        assertThat(TORCH.mayTouch(tolerant)).isFalse();
        assertThat(mutual.mayTouch(tolerant)).isTrue();
        assertThat(tolerant.mayTouch(mutual)).isTrue();
    }

    @Test
    void coralsKnownByTheirFormAloneAreNotTakenForKin() {
        CoralTraits form = FormTraits.of(CoralForm.EUPHYLLIA);
        assertThat(form.mayTouch(form)).isFalse();
        assertThat(form.genus()).isEmpty();
    }

    @Test
    void theGapIsTheSameSeenFromEitherCoral() {
        SeededCases.check(300, draw -> {
            Colony one = colony(TORCH, draw.between(0.01, 0.1), draw.between(0, 1), draw.between(0, 1), 0.1);
            Colony other = colony(
                    HAMMER, draw.between(0.01, 0.1), draw.between(0, 1), draw.between(0, 1), draw.between(0, 0.4));
            Neighbours here = Neighbours.of(one, other);
            Neighbours there = Neighbours.of(other, one);
            assertThat(here.gap()).isCloseTo(there.gap(), within(1e-12));
            assertThat(here.needed()).isCloseTo(there.needed(), within(1e-12));
            assertThat(here.standing()).isEqualTo(there.standing());
        });
    }
}

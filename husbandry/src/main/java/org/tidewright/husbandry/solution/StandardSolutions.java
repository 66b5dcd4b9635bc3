package org.tidewright.husbandry.solution;

import java.util.EnumMap;
import java.util.Map;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.ions.MajorIon;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.Limewater;

/** The kinds of solution that reef keepers dose. */
public final class StandardSolutions {
    private StandardSolutions() {}

    /**
     * Bicarbonate, carbonate or hydroxide part of so much alkalinity.
     *
     * @param salt one that brings alkalinity
     * @param alkalinity moles of charge per volume; 1000 is one meq/mL
     */
    public static Solution alkaline(Salt salt, @Unit("mol/m^3") double alkalinity) {
        Bounds.positive(alkalinity, "mol/m^3", "alkalinity of the solution");
        if (salt.alkalinity() <= 0) {
            throw new IllegalArgumentException(
                    salt.words() + " brings no alkalinity; take a bicarbonate, a carbonate or a hydroxide");
        }
        return Solution.of(salt, alkalinity / salt.alkalinity());
    }

    /**
     * Calcium part that replaces, volume for volume, what calcification takes along with the alkalinity of another part.
     *
     * <pre>Ca = (1 - f) A/2, Mg = f A/2</pre>
     *
     * @param alkaline the other part
     * @param magnesiumShare f, moles of magnesium among those of both in what is laid down; 0 leaves magnesium out
     * @source stoichiometry of (Ca, Mg)CO3
     */
    public static Solution calciumMatching(Solution alkaline, @Unit("1") double magnesiumShare) {
        Bounds.within(magnesiumShare, "1", 0, 0.5, "magnesium's share of the skeleton", "is it in percent?");
        double divalent =
                Bounds.positive(alkaline.total(Salt::alkalinity), "mol/m^3", "alkalinity of the part to be matched")
                        / 2;
        return new Solution(Map.of(
                Salt.CALCIUM_CHLORIDE, (1 - magnesiumShare) * divalent,
                Salt.MAGNESIUM_CHLORIDE, magnesiumShare * divalent));
    }

    /** Calcium part of so much calcium. */
    public static Solution calcium(@Unit("mol/m^3") double calcium) {
        return Solution.of(Salt.CALCIUM_CHLORIDE, calcium);
    }

    /**
     * Magnesium from chloride and sulfate in the proportion that leaves the sea's own of the two.
     *
     * <pre>SO4 = s Mg, with s/(2 (1 - s)) = (SO4/Cl) of the sea</pre>
     *
     * @param magnesium moles per volume
     * @source {@link MajorIon}
     */
    public static Solution magnesium(@Unit("mol/m^3") double magnesium) {
        double ratio = MajorIon.SULFATE.moleFraction() / MajorIon.CHLORIDE.moleFraction();
        double sulfateShare = 2 * ratio / (1 + 2 * ratio);
        Map<Salt, Double> content = new EnumMap<>(Salt.class);
        content.put(Salt.MAGNESIUM_CHLORIDE, (1 - sulfateShare) * magnesium);
        content.put(Salt.MAGNESIUM_SULFATE, sulfateShare * magnesium);
        return new Solution(content);
    }

    /**
     * Saturated limewater, settled.
     *
     * @param temperature of the reservoir, ITS-90
     * @source {@link Limewater#saturated}
     */
    public static Solution limewater(@Unit("degC") double temperature) {
        return Solution.of(Salt.CALCIUM_HYDROXIDE, Limewater.saturated(temperature));
    }
}

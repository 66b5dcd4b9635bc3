package org.tidewright.husbandry.solution;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.ions.MajorIon;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Salts that turn a residue of table salt into sea salt, and the tank water that may then be taken out for it. Amounts and
 * volume count for the same time as the residue.
 *
 * <p>Chloride comes out 0.6 % over the sea's: it stands for bromide, bicarbonate and what else is left out. Traces are not
 * in it.
 *
 * @param extra moles of each salt to dose besides
 * @param exported tank water to take out and replace by fresh water
 */
public record BalancedResidue(
        Map<Salt, @Unit("*") Double> extra, @Unit("*") double exported) {
    public BalancedResidue {
        extra = Collections.unmodifiableMap(new EnumMap<>(extra));
    }

    /**
     * For a residue of sodium chloride, a mole for each mole of alkalinity that was dosed as a sodium salt.
     *
     * <pre>Mg, K, Ca, SO4 each as the sea has it to its sodium; V = Na/(Na of the tank)</pre>
     *
     * @param tableSalt moles of it
     * @param practicalSalinity of the tank, PSS-78
     * @param temperature of the tank, ITS-90
     * @source {@link MajorIon}; EOS-80 density
     */
    public static BalancedResidue of(
            @Unit("*") double tableSalt, @Unit("1") double practicalSalinity, @Unit("degC") double temperature) {
        Bounds.notNegative(tableSalt, "mol", "residue of sodium chloride");
        Bounds.practicalSalinity(practicalSalinity);
        Bounds.positive(practicalSalinity, "1", "practical salinity");
        double sulfate = toSodium(MajorIon.SULFATE);
        Map<Salt, Double> extra = new EnumMap<>(Salt.class);
        extra.put(Salt.MAGNESIUM_SULFATE, tableSalt * sulfate);
        extra.put(Salt.MAGNESIUM_CHLORIDE, tableSalt * (toSodium(MajorIon.MAGNESIUM) - sulfate));
        extra.put(Salt.POTASSIUM_CHLORIDE, tableSalt * toSodium(MajorIon.POTASSIUM));
        extra.put(Salt.CALCIUM_CHLORIDE, tableSalt * toSodium(MajorIon.CALCIUM));
        double sodium = MajorIon.SODIUM.amount(practicalSalinity) * Density.ofSeawater(temperature, practicalSalinity);
        return new BalancedResidue(extra, tableSalt / sodium);
    }

    private static double toSodium(MajorIon ion) {
        return ion.moleFraction() / MajorIon.SODIUM.moleFraction();
    }
}

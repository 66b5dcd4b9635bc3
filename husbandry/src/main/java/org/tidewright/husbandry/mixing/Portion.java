package org.tidewright.husbandry.mixing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.ions.WaterParcel;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** So much of a water. */
public record Portion(@Unit("m^3") double volume, KnownWater water) {
    /** Refuses what cannot be meant. */
    public Portion {
        Bounds.within(volume, "m^3", 0, 1e5, "volume of water", "is it in litres?");
    }

    /** With its salt. */
    @Unit("kg")
    public double mass() {
        return volume * water.density();
    }

    /**
     * What waters become when poured together, in whatever order.
     *
     * <pre>
     * M = sum(rho_i V_i),  S = sum(rho_i V_i S_i) / M,  heat kept, V = M / rho(S, T),  c = sum(V_i c_i) / V
     * </pre>
     *
     * Salinity goes with mass and not with volume. What is told per litre, by a kit, is an amount in a volume: the amounts
     * add up, and the mixture's volume, which is not quite the sum of the volumes, follows from its density. Errors of the
     * waters are taken to be independent: each counts by its water's share, of mass for salinity and temperature, of volume
     * for the rest.
     *
     * @param portions at least one of them not empty
     */
    public static Portion mix(List<Portion> portions) {
        List<Portion> poured =
                portions.stream().filter(portion -> portion.volume > 0).toList();
        if (poured.isEmpty()) {
            throw new IllegalArgumentException("nothing to mix: the volume of every portion is 0");
        }
        WaterParcel mixed =
                WaterParcel.mix(poured.stream().map(Portion::saltAndHeat).toList());
        double volume = mixed.volume();
        Map<WaterQuantity, Double> values = new EnumMap<>(WaterQuantity.class);
        for (WaterQuantity quantity : KnownWater.KEPT) {
            if (poured.stream().allMatch(portion -> portion.water.values().containsKey(quantity))) {
                values.put(
                        quantity,
                        switch (quantity) {
                            case SALINITY -> mixed.practicalSalinity();
                            case TEMPERATURE -> mixed.temperature();
                            default ->
                                poured.stream()
                                                .mapToDouble(portion -> portion.volume
                                                        * portion.water
                                                                .value(quantity)
                                                                .orElseThrow())
                                                .sum()
                                        / volume;
                        });
            }
        }
        return new Portion(volume, new KnownWater(values, errors(poured, values.keySet())));
    }

    private static Map<WaterQuantity, Double> errors(List<Portion> poured, Set<WaterQuantity> known) {
        Map<WaterQuantity, Double> errors = new EnumMap<>(WaterQuantity.class);
        for (WaterQuantity quantity : known) {
            boolean byMass = quantity == WaterQuantity.SALINITY || quantity == WaterQuantity.TEMPERATURE;
            double whole = 0;
            double squares = 0;
            for (Portion portion : poured) {
                double weight = byMass ? portion.mass() : portion.volume;
                whole += weight;
                squares += Math.pow(weight * portion.water.error(quantity), 2);
            }
            if (squares > 0) {
                errors.put(quantity, Math.sqrt(squares) / whole);
            }
        }
        return errors;
    }

    /** This and another poured together. */
    public Portion mixedWith(Portion other) {
        return mix(List.of(this, other));
    }

    /** The parcel keeps mass, salt and heat; alkalinity and the rest are kept here, since some of them may be unknown. */
    private WaterParcel saltAndHeat() {
        return WaterParcel.seawaterOfVolume(volume, water.temperatureForDensity(), water.salinityForDensity(), 0, 0);
    }
}

package org.tidewright.seawater.carbonate;

import java.util.Map;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Carbonate systems in columns: one array a quantity, one index a water. Nothing is allocated per point. An instance
 * holds what it works on, so it belongs to one thread; make another for another.
 */
public final class CarbonateBatch {
    private static final double[] NONE = {};

    private final KnownPair pair;
    private final BoronRatio boron;
    private final CarbonicAcid carbonicAcid;
    private final CarbonateQuantity[] wanted;
    private final double[][] columns;
    private final Equilibria equilibria = new Equilibria();
    private final CarbonateState state = new CarbonateState(equilibria);
    private double[] phosphate = NONE;
    private double[] silicate = NONE;
    private double[] ammonia = NONE;

    /**
     * A batch that fills these columns.
     *
     * @param pair which two quantities are given
     * @param boron whose ratio of boron to salinity
     * @param carbonicAcid whose constants for carbonic acid
     * @param wanted the columns to fill, each at least as long as those given will be
     */
    public CarbonateBatch(
            KnownPair pair,
            BoronRatio boron,
            CarbonicAcid carbonicAcid,
            @Unit("*") Map<CarbonateQuantity, double[]> wanted) {
        this.pair = pair;
        this.boron = boron;
        this.carbonicAcid = carbonicAcid;
        this.wanted = wanted.keySet().toArray(CarbonateQuantity[]::new);
        this.columns = new double[this.wanted.length][];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = wanted.getOrDefault(this.wanted[i], NONE);
        }
    }

    /** Nutrients, one number a water; without this there are none. */
    public CarbonateBatch withNutrients(
            @Unit("mol/kg") double[] newPhosphate,
            @Unit("mol/kg") double[] newSilicate,
            @Unit("mol/kg") double[] newAmmonia) {
        phosphate = newPhosphate;
        silicate = newSilicate;
        ammonia = newAmmonia;
        return this;
    }

    /**
     * Fills the columns for every water given.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @param first the pair's first quantity, in the unit it states
     * @param second the pair's second quantity
     * @throws IllegalArgumentException naming the index, where columns differ in length or a water is refused; what
     *     stands before it is filled
     */
    public void solve(
            @Unit("degC") double[] temperature,
            @Unit("1") double[] practicalSalinity,
            @Unit("*") double[] first,
            @Unit("*") double[] second) {
        int size = temperature.length;
        sameLength("practical salinity", practicalSalinity, size);
        sameLength("first known quantity", first, size);
        sameLength("second known quantity", second, size);
        boolean nutrients = phosphate != NONE;
        if (nutrients) {
            sameLength("phosphate", phosphate, size);
            sameLength("silicate", silicate, size);
            sameLength("ammonia", ammonia, size);
        }
        for (int j = 0; j < columns.length; j++) {
            if (columns[j].length < size) {
                throw new IllegalArgumentException("column for " + wanted[j] + " has " + columns[j].length
                        + " places; there are " + size + " points");
            }
        }
        for (int i = 0; i < size; i++) {
            try {
                double salinity = practicalSalinity[i];
                equilibria.set(temperature[i], salinity, carbonicAcid);
                double ofPhosphate = nutrients ? phosphate[i] : 0;
                double ofSilicate = nutrients ? silicate[i] : 0;
                double ofAmmonia = nutrients ? ammonia[i] : 0;
                TotalConcentrations.refuseNonsense(ofPhosphate, "total phosphate");
                TotalConcentrations.refuseNonsense(ofSilicate, "total silicate");
                TotalConcentrations.refuseNonsense(ofAmmonia, "total ammonia");
                equilibria.setTotals(
                        boron.totalBorate(salinity),
                        TotalConcentrations.naturalCalcium(salinity),
                        ofPhosphate,
                        ofSilicate,
                        ofAmmonia);
                pair.solve(equilibria, first[i], second[i], state);
            } catch (IllegalArgumentException refused) {
                throw new IllegalArgumentException("point " + i + ": " + refused.getMessage(), refused);
            }
            for (int j = 0; j < columns.length; j++) {
                columns[j][i] = state.get(wanted[j]);
            }
        }
    }

    private static void sameLength(String what, double[] column, int size) {
        if (column.length != size) {
            throw Bounds.refusal(column.length, "1", "length of " + what, "that of temperature, " + size);
        }
    }
}

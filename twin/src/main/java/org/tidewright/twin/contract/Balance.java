package org.tidewright.twin.contract;

import java.util.EnumMap;
import java.util.Map;
import org.tidewright.seawater.unit.Unit;

/**
 * A sum over stocks that nothing can change but a move from one body to another: matter, heat and charge are neither made
 * nor lost.
 */
public enum Balance {
    WATER(Stock.WATER),
    SALT(Stock.SALT),
    HEAT(Stock.HEAT),
    OXYGEN(Stock.OXYGEN),
    CARBON(Stock.INORGANIC_CARBON, Stock.ORGANIC_CARBON),
    CALCIUM(Stock.CALCIUM),
    MAGNESIUM(Stock.MAGNESIUM),
    NITROGEN(Stock.AMMONIA, Stock.NITRITE, Stock.NITRATE, Stock.ORGANIC_NITROGEN, Stock.NITROGEN_GAS),
    PHOSPHORUS(Stock.PHOSPHATE, Stock.ORGANIC_PHOSPHORUS),
    /**
     * Alkalinity less the charges that change it: alkalinity rises by one for each ammonium and falls by one for each
     * nitrate, nitrite and phosphate that appears, and rises by two for each calcium and magnesium. Explicit conservative
     * form, Wolf-Gladrow et al. 2007, Mar. Chem. 106, 287-300, eq. 32.
     */
    CHARGE(Map.of(
            Stock.ALKALINITY, 1.0,
            Stock.AMMONIA, -1.0,
            Stock.NITRITE, 1.0,
            Stock.NITRATE, 1.0,
            Stock.PHOSPHATE, 1.0,
            Stock.CALCIUM, -2.0,
            Stock.MAGNESIUM, -2.0));

    private final Map<Stock, Double> weights;

    Balance(Stock... parts) {
        weights = new EnumMap<>(Stock.class);
        for (Stock part : parts) {
            weights.put(part, 1.0);
        }
    }

    Balance(Map<Stock, Double> weights) {
        this.weights = new EnumMap<>(weights);
    }

    /** What one unit of a stock counts for in this sum. */
    public @Unit("1") double weight(Stock stock) {
        return weights.getOrDefault(stock, 0.0);
    }
}

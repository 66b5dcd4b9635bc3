package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.unit.Unit;

/**
 * Boron that comes with the salt of the sea, by two publications 4 % apart. The choice moves a pH computed from
 * alkalinity and inorganic carbon by 0.006, its carbon dioxide by 1.5 % and the borate share of alkalinity by 4 %.
 */
public enum BoronRatio {
    /** 0.0004157 mol/kg at S = 35. Uppström 1974, Deep-Sea Res. 21, 161-162, doi 10.1016/0011-7471(74)90074-6. */
    UPPSTROM_1974(0.0004157, "Uppström 1974"),

    /**
     * 0.0004326 mol/kg at S = 35. Lee et al. 2010, Geochim. Cosmochim. Acta 74, 1801-1811, doi
     * 10.1016/j.gca.2009.12.027.
     */
    LEE_2010(0.0004326, "Lee et al. 2010");

    private final double atThirtyFive; // mol/kg
    private final String citation;

    BoronRatio(double atThirtyFive, String citation) {
        this.atThirtyFive = atThirtyFive;
        this.citation = citation;
    }

    /** Authors and year. */
    public String citation() {
        return citation;
    }

    @Unit("mol/kg")
    double totalBorate(double practicalSalinity) {
        return atThirtyFive * practicalSalinity / 35;
    }
}

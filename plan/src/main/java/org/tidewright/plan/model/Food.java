package org.tidewright.plan.model;

import org.tidewright.seawater.unit.Unit;

/**
 * Foods, by what a mass of them, as fed, brings into the water. Brands differ: the ranges beside each are those of usual
 * products, and a label's protein over 6.25 is a better nitrogen than the one here.
 *
 * @source composition from memory of product labels and food tables, save where a constant names another; nitrogen is protein / 6.25, carbon is {@link
 *     #CARBON_OF_DRY_MATTER} of dry matter
 */
public enum Food {
    /** Dry pellets for marine fish: water 5-10 %, protein 40-55 %, phosphorus 8-16 mg/g. */
    DRY_PELLET(0.08, 0.077, 0.012),
    /** Flakes: protein 40-50 %. */
    FLAKE(0.07, 0.074, 0.011),
    /** Freeze-dried crustaceans: protein 60-70 %. */
    FREEZE_DRIED(0.05, 0.100, 0.012),
    /** Frozen mysids, thawed and drained: water 80-88 %, protein 8-13 %. The thaw water holds 10-30 % of the phosphorus. */
    FROZEN_MYSIS(0.82, 0.0185, 0.0022),
    /** Frozen adult brine shrimp, thawed and drained: water 88-92 %, protein 4-6.5 %. */
    FROZEN_BRINE_SHRIMP(0.90, 0.0088, 0.0011),
    /** Chopped flesh of shrimp; of fish much the same: protein 20-22 % (USDA food tables, shrimp, mixed species, raw). */
    CHOPPED_SEAFOOD(0.76, 0.0325, 0.00205),
    /** Dried sheets of red seaweed: water 4-7 %, protein 32-37 % (Hwang, Ki and Chung 2013, Prev. Nutr. Food Sci. 18, 139). */
    SEAWEED_SHEET(0.05, 0.055, 0.0055),
    /**
     * Living phytoplankton in its culture, a gram for each millilitre: nitrogen 0.01-0.05 mg/mL, phosphorus 0.002-0.007
     * mg/mL. The water's own salts are counted as water.
     */
    PHYTOPLANKTON(0.9996, 0.03e-3, 0.0045e-3);

    /** Carbon in the dry matter of foods, 0.40-0.50: from memory of elemental analyses of feeds and plankton. */
    @Unit("kg/kg")
    public static final double CARBON_OF_DRY_MATTER = 0.45;

    /** Where the numbers come from, for showing beside them. */
    public static final String SOURCE = "from memory, product labels and food tables";

    private final double water;
    private final double nitrogen;
    private final double phosphorus;

    Food(double water, double nitrogen, double phosphorus) {
        this.water = water;
        this.nitrogen = nitrogen;
        this.phosphorus = phosphorus;
    }

    /** Share of its mass that is water. */
    @Unit("kg/kg")
    public double water() {
        return water;
    }

    /** Nitrogen, share of the mass as fed. */
    @Unit("kg/kg")
    public double nitrogen() {
        return nitrogen;
    }

    /** Phosphorus, share of the mass as fed. */
    @Unit("kg/kg")
    public double phosphorus() {
        return phosphorus;
    }

    /** Organic carbon, share of the mass as fed. */
    @Unit("kg/kg")
    public double carbon() {
        return CARBON_OF_DRY_MATTER * (1 - water);
    }
}

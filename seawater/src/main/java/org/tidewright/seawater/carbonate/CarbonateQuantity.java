package org.tidewright.seawater.carbonate;

/** A number that {@link CarbonateBatch} can fill a column with; {@link CarbonateState#get} says which method it is. */
public enum CarbonateQuantity {
    ALKALINITY,
    INORGANIC_CARBON,
    PH_TOTAL,
    PH_FREE,
    PH_SEAWATER,
    PH_NBS,
    FUGACITY,
    PARTIAL_PRESSURE,
    CARBON_DIOXIDE,
    BICARBONATE,
    CARBONATE,
    BORATE,
    BORIC_ACID,
    HYDROXIDE,
    FREE_HYDROGEN,
    PHOSPHORIC_ACID,
    DIHYDROGEN_PHOSPHATE,
    HYDROGEN_PHOSPHATE,
    PHOSPHATE_ION,
    SILICATE_ION,
    UNIONISED_AMMONIA,
    UNIONISED_SHARE,
    AMMONIUM,
    BISULFATE,
    HYDROGEN_FLUORIDE,
    ARAGONITE_SATURATION,
    CALCITE_SATURATION,
    REVELLE_FACTOR
}

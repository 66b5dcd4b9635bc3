package org.tidewright.seawater.carbonate;

import java.util.function.ToDoubleFunction;

/** A number that {@link CarbonateBatch} can fill a column with; each is the method of {@link CarbonateState}. */
public enum CarbonateQuantity {
    ALKALINITY(CarbonateState::alkalinity),
    INORGANIC_CARBON(CarbonateState::inorganicCarbon),
    PH_TOTAL(CarbonateState::ph),
    PH_FREE(state -> state.ph(PhScale.FREE)),
    PH_SEAWATER(state -> state.ph(PhScale.SEAWATER)),
    PH_NBS(state -> state.ph(PhScale.NBS)),
    FUGACITY(CarbonateState::fugacity),
    PARTIAL_PRESSURE(CarbonateState::partialPressure),
    CARBON_DIOXIDE(CarbonateState::carbonDioxide),
    BICARBONATE(CarbonateState::bicarbonate),
    CARBONATE(CarbonateState::carbonate),
    BORATE(CarbonateState::borate),
    HYDROXIDE(CarbonateState::hydroxide),
    FREE_HYDROGEN(CarbonateState::freeHydrogen),
    UNIONISED_SHARE(CarbonateState::unionisedShare),
    ARAGONITE_SATURATION(CarbonateState::aragoniteSaturation),
    CALCITE_SATURATION(CarbonateState::calciteSaturation),
    REVELLE_FACTOR(CarbonateState::revelleFactor);

    private final ToDoubleFunction<CarbonateState> of;

    CarbonateQuantity(ToDoubleFunction<CarbonateState> of) {
        this.of = of;
    }

    double of(CarbonateState state) {
        return of.applyAsDouble(state);
    }
}

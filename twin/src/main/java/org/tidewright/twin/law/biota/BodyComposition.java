package org.tidewright.twin.law.biota;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.nutrient.ElementMass;

/** What a kilogram of live fish holds. */
public final class BodyComposition {
    /** Dry over live mass, 0.25 to 0.30; from memory. */
    @Unit("1")
    public static final double DRY = 0.27;

    /** A tenth of dry mass, Schiettekatte et al. 2020, Funct. Ecol. 34, 1857, parameters of the surgeonfish. */
    @Unit("mol/kg")
    public static final double NITROGEN = 0.10 * DRY / ElementMass.NITROGEN;

    /**
     * 3.6 g/kg of live mass, Prabhu, Schrama and Kaushik 2013, Aquac. Nutr. 19, 895. Half or more of it is in bones.
     */
    @Unit("mol/kg")
    public static final double PHOSPHORUS = 3.6e-3 / ElementMass.PHOSPHORUS;

    /** 45 % of dry mass; from memory. */
    @Unit("mol/kg")
    public static final double CARBON = 0.45 * DRY / ElementMass.CARBON;

    private BodyComposition() {}
}

package org.tidewright.twin.law.nutrient;

import org.tidewright.seawater.unit.Unit;

/** Molar masses of the elements of life, from the IUPAC standard atomic weights of 2005. */
public final class ElementMass {
    @Unit("kg/mol")
    public static final double CARBON = 12.0107e-3;

    @Unit("kg/mol")
    public static final double NITROGEN = 14.0067e-3;

    @Unit("kg/mol")
    public static final double PHOSPHORUS = 30.973762e-3;

    private ElementMass() {}
}

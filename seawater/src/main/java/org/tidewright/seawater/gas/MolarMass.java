package org.tidewright.seawater.gas;

import org.tidewright.seawater.unit.Unit;

/** Molar masses of gases, from the IUPAC standard atomic weights. */
public final class MolarMass {
    /** O2: twice 15.9994 g/mol (IUPAC 2007), the value the oxygen references use; 15.999 (2021) is 0.003 % less. */
    @Unit("kg/mol")
    public static final double OXYGEN = 31.9988e-3;

    private MolarMass() {}
}

package org.tidewright.seawater;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.heat.LatentHeat;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.transport.Viscosity;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;

/** Water at 25 degC and S 35 as an independent script worked it out; the law of each value stands in its row. */
class WorkedExamplesTest {
    private static final ReferenceTable WORKED =
            ReferenceTable.read(WorkedExamplesTest.class, "/reference/worked_examples.csv");

    @Test
    void theWaterOfTheExamplesHasTheirProperties() {
        check("EP1", Density.ofSeawater(25, 35));
        check("EP2", SpecificHeat.ofSeawater(25, 35));
        check("EP3", 1000 * Viscosity.ofSeawater(25, 35));
        check("EP4", VapourPressure.ofPureWater(25));
        check("EP5", OxygenSolubility.massPerVolume(25, 35));
        check("EP6", LatentHeat.ofEvaporation(25.5) / 1000);
        check("EP7", OxygenSolubility.perMass(10, 35));
        check("E6.10", AbsoluteSalinity.saltPerVolume(25, 35));
    }

    private static void check(String id, double got) {
        Close.relative(WORKED.row("id", id), "value", got, 1e-3);
    }
}

package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Exchange of carbon dioxide through the water's surface. It diffuses as other gases do, a little slower than oxygen;
 * where the film is thick some of it takes the way through bicarbonate, which is faster.
 */
public final class CarbonDioxideTransfer {
    private static final double GAS_CONSTANT = 8.31446e-3; // kJ/(mol K)

    private CarbonDioxideTransfer() {}

    /**
     * Transfer velocity of carbon dioxide from that of oxygen at the same surface, without the help of chemistry.
     *
     * <pre>k = k(O2) (Sc(O2) / Sc(CO2))^n</pre>
     *
     * @param oxygenVelocity k(O2), at this temperature
     * @param temperature of the water, ITS-90
     * @param exponent n, {@link org.tidewright.twin.law.gas.GasTransfer#RIPPLED} or
     *     {@link org.tidewright.twin.law.gas.GasTransfer#SMOOTH}
     * @return transfer velocity
     * @source Jaehne et al. 1987, J. Geophys. Res. 92, 1937-1949; Schmidt numbers of Wanninkhof 2014, Limnol. Oceanogr.
     *     Methods 12, 351-362
     * @validity -2 to 40 degC, S near 35
     */
    @Unit("m/s")
    public static double velocity(
            @Unit("m/s") double oxygenVelocity, @Unit("degC") double temperature, @Unit("1") double exponent) {
        Bounds.within(oxygenVelocity, "m/s", 0, 0.1, "transfer velocity of oxygen");
        return oxygenVelocity * overOxygen(temperature, exponent);
    }

    /**
     * How much slower carbon dioxide crosses a film than oxygen does, without the help of chemistry.
     *
     * <pre>k / k(O2) = (Sc(O2) / Sc(CO2))^n</pre>
     *
     * @param temperature of the water, ITS-90
     * @param exponent n, {@link org.tidewright.twin.law.gas.GasTransfer#RIPPLED} or
     *     {@link org.tidewright.twin.law.gas.GasTransfer#SMOOTH}
     * @return ratio, 0.92 in moved seawater of 20 degC
     * @source Jaehne et al. 1987, J. Geophys. Res. 92, 1937-1949; Schmidt numbers of Wanninkhof 2014, Limnol. Oceanogr.
     *     Methods 12, 351-362
     * @validity -2 to 40 degC, S near 35
     */
    @Unit("1")
    public static double overOxygen(@Unit("degC") double temperature, @Unit("1") double exponent) {
        Bounds.within(exponent, "1", 0.4, 0.8, "exponent of the Schmidt number");
        return Math.pow(SchmidtNumber.ofOxygen(temperature) / SchmidtNumber.ofCarbonDioxide(temperature), exponent);
    }

    /**
     * Rate constant at which dissolved carbon dioxide reacts with water and with hydroxide.
     *
     * <pre>
     * r = k_CO2 + (k_OH KW) / [H+]
     * ln k_CO2 = 1246.98 - 6.19e4 / T - 183.0 ln T
     * k_OH KW = 499002.24 exp(4.2986e-4 S^2 + 5.75499e-5 S) exp(-90166.83 / (R T)),  R = 8.31451 J/(mol K)
     * </pre>
     *
     * @param ph total scale
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @return share of the dissolved CO2 that reacts in a time
     * @source Johnson 1982, Limnol. Oceanogr. 27, 849-855 (k_CO2); Schulz et al. 2006, Mar. Chem. 100, 53-65 (k_OH KW,
     *     fitted to Johnson's); coefficients read in independent open code
     * @validity 5 to 35 degC, S 30 to 37
     * @checkvalue 25 degC: k_CO2 = 0.037 1/s
     */
    @Unit("1/s")
    public static double hydrationRate(
            @Unit("1") double ph, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        Bounds.within(ph, "1", 0, 14, "pH");
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        double kelvin = TemperatureScale.kelvin(temperature);
        double s = practicalSalinity;
        double withWater = Math.exp(1246.98 - 6.19e4 / kelvin - 183.0 * Math.log(kelvin));
        double withHydroxide =
                499_002.24 * Math.exp(s * (4.2986e-4 * s + 5.75499e-5)) * Math.exp(-90_166.83 / (8.31451 * kelvin));
        return withWater + withHydroxide * Math.pow(10, ph);
    }

    /**
     * Diffusivity of carbon dioxide in water.
     *
     * <pre>D = 5019e-9 m^2/s exp(-19.51 kJ/mol / (R T))</pre>
     *
     * @param temperature ITS-90
     * @return diffusivity; in seawater a few per cent less
     * @source Jaehne, Heinz and Dietrich 1987, J. Geophys. Res. 92, 10767-10776; read in independent open code
     * @validity 5 to 35 degC, fresh water
     * @checkvalue 25 degC: 1.92e-9 m^2/s (from memory)
     */
    @Unit("m^2/s")
    public static double diffusivity(@Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        return 5019e-9 * Math.exp(-19.51 / (GAS_CONSTANT * TemperatureScale.kelvin(temperature)));
    }

    /**
     * Factor by which the reaction to bicarbonate in the film speeds the exchange.
     *
     * <pre>
     * alpha = tau / [(tau - 1) + tanh(Q z) / (Q z)],  z = D / k,  Q = sqrt(r tau / D)
     * tau = 1 + [H+]^2 / (K1 K2 + K1 [H+])
     * </pre>
     *
     * Seawater of 25 degC and pH 8.2: 1.01 at 20 cm/h, 1.05 at 10, 1.3 at 4, 2 at 2, 4 at 1 cm/h. Below 2 cm/h the
     * transfer k alpha hardly depends on the film any more and stays near sqrt(r D), 4 cm/h.
     *
     * @param velocity k without chemistry; at 0 the factor is its largest and k alpha still 0
     * @param ph total scale
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @param firstConstant K1 of carbonic acid, total scale
     * @param secondConstant K2 of carbonic acid, total scale
     * @return factor, from 1 up
     * @source Hoover and Berkshire 1969, J. Geophys. Res. 74, 456-464, as in Wanninkhof and Knox 1996, Limnol.
     *     Oceanogr. 41, 689-697; form read in independent open code
     * @validity 5 to 35 degC; a stagnant film of one thickness: surface renewal gives some per cent less
     * @checkvalue standing water at 20 degC: k alpha 2.6 cm/h (Wanninkhof 1992, from memory)
     */
    @Unit("1")
    public static double enhancement(
            @Unit("m/s") double velocity,
            @Unit("1") double ph,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("mol/kg") double firstConstant,
            @Unit("mol/kg") double secondConstant) {
        Bounds.within(velocity, "m/s", 0, 0.1, "transfer velocity");
        Bounds.within(firstConstant, "mol/kg", 1e-8, 1e-4, "first constant of carbonic acid");
        Bounds.within(secondConstant, "mol/kg", 1e-12, 1e-6, "second constant of carbonic acid");
        double hydrogen = Math.pow(10, -ph);
        // tau - 1, kept apart because in seawater it is some thousandths
        double excess = hydrogen * hydrogen / (firstConstant * (secondConstant + hydrogen));
        double rate = hydrationRate(ph, temperature, practicalSalinity);
        double thickness = Math.sqrt(rate * (1 + excess) * diffusivity(temperature)) / velocity; // Q z
        return (1 + excess) / (excess + tanhOver(thickness));
    }

    /** tanh(x)/x, 1 at zero and 0 at infinity. */
    private static double tanhOver(double x) {
        if (x < 1e-4) {
            return 1 - x * x / 3;
        }
        return Math.tanh(x) / x;
    }

    /**
     * Dissolved carbon dioxide that is in equilibrium with air.
     *
     * <pre>[CO2*] = rho K0 (f/p) x (P - p_w)</pre>
     *
     * @param shareOfDryAir x, moles per mole of dry air; 420 ppm is 420e-6
     * @param temperature of the water, ITS-90
     * @param practicalSalinity PSS-78
     * @param pressure of the air at the water, not reduced to sea level
     * @param density rho of the water
     * @return concentration of CO2 and H2CO3 together
     * @source {@link CarbonDioxide#solubility}, {@link CarbonDioxide#fugacityFactor},
     *     {@link CarbonDioxide#partialPressure}
     * @validity as they
     */
    @Unit("mol/m^3")
    public static double atEquilibrium(
            @Unit("1") double shareOfDryAir,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("Pa") double pressure,
            @Unit("kg/m^3") double density) {
        Bounds.within(density, "kg/m^3", 900, 1200, "density of the water");
        return density
                * CarbonDioxide.solubility(temperature, practicalSalinity)
                * CarbonDioxide.fugacityFactor(temperature)
                * CarbonDioxide.partialPressure(shareOfDryAir, temperature, practicalSalinity, pressure);
    }

    /**
     * Carbon dioxide that enters the water through each area of surface; negative when it leaves.
     *
     * <pre>J = alpha k ([CO2*]_air - [CO2*])</pre>
     *
     * @param velocity k without chemistry
     * @param enhancement alpha
     * @param equilibrium concentration in equilibrium with the air
     * @param concentration dissolved CO2 of the water, not all inorganic carbon
     * @return amount per area and time
     * @source thin-film model, Liss and Slater 1974, Nature 247, 181-184
     * @validity gases the water resists
     */
    @Unit("mol/(m^2*s)")
    public static double flux(
            @Unit("m/s") double velocity,
            @Unit("1") double enhancement,
            @Unit("mol/m^3") double equilibrium,
            @Unit("mol/m^3") double concentration) {
        Bounds.within(velocity, "m/s", 0, 0.1, "transfer velocity");
        Bounds.within(enhancement, "1", 0, 1e15, "chemical enhancement");
        Bounds.within(equilibrium, "mol/m^3", 0, 1e6, "carbon dioxide in equilibrium with the air");
        Bounds.within(concentration, "mol/m^3", 0, 1e6, "dissolved carbon dioxide");
        return velocity * enhancement * (equilibrium - concentration);
    }
}

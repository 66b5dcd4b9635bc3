package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.carbonate.CalciumCarbonate;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Chamber of coral gravel that carbon dioxide dissolves, at one temperature and salinity. Made once for a water; its
 * methods allocate nothing. Amounts "dissolved" are moles of carbonate, (Ca, Mg)CO3, per volume of water that passes.
 *
 * <p>At the chamber's pH, below 7.5, all alkalinity is taken for carbonate's: borate's is at most 0.02 mol/m^3 of it.
 * The gravel is taken for aragonite.
 *
 * @param first K1 of carbonic acid, total scale
 * @param second K2 of carbonic acid, total scale
 * @param aragonite solubility product
 * @param density of the water, which carries hydrogen ions per kilogram to the volume
 */
public record CalciumReactor(
        @Unit("mol/m^3") double first,
        @Unit("mol/m^3") double second,
        @Unit("(mol/m^3)^2") double aragonite,
        @Unit("kg/m^3") double density) {

    /**
     * How fast gravel dissolves, as the flow a kilogram of it brings half way to saturation. Usual: 5 kg bring 43 L/day
     * four fifths of the way. Common practice, an order of magnitude.
     */
    @Unit("m^3/(kg*s)")
    public static final double RATE_USUAL = 4e-7;

    /** The same, low: coarse or spent gravel, little recirculation; common practice. */
    @Unit("m^3/(kg*s)")
    public static final double RATE_LOW = 1e-7;

    /** The same, high: fine gravel, strong recirculation; common practice. */
    @Unit("m^3/(kg*s)")
    public static final double RATE_HIGH = 1.6e-6;

    /** Magnesium's share of what aragonite gravel gives, 0.005 to 0.02; from memory. */
    @Unit("1")
    public static final double MAGNESIUM_SHARE = 0.01;

    /** Refuses constants that cannot be meant. */
    public CalciumReactor {
        Bounds.within(first, "mol/m^3", 1e-6, 0.1, "first constant of carbonic acid");
        Bounds.within(second, "mol/m^3", 1e-10, 1e-3, "second constant of carbonic acid");
        Bounds.within(aragonite, "(mol/m^3)^2", 1e-4, 100, "solubility product of aragonite");
        Bounds.within(density, "kg/m^3", 900, 1200, "density of the water");
    }

    /**
     * The chamber at a temperature and salinity.
     *
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @source Lueker, Dickson and Keeling 2000 ({@link CarbonicAcid#LUEKER_2000}); Mucci 1983 ({@link
     *     CalciumCarbonate#aragonite})
     * @validity 5 to 35 degC, S 19 to 43
     */
    public static CalciumReactor at(@Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        double density = Density.ofSeawater(temperature, practicalSalinity);
        return new CalciumReactor(
                CarbonicAcid.LUEKER_2000.first(temperature, practicalSalinity) * density,
                CarbonicAcid.LUEKER_2000.second(temperature, practicalSalinity) * density,
                CalciumCarbonate.aragonite(temperature, practicalSalinity) * density * density,
                density);
    }

    /**
     * What would dissolve until aragonite is saturated, where a controller holds the chamber's pH.
     *
     * <pre>
     * [CO3] = Ksp / Ca,  [HCO3] = [CO3] H/K2,  A = [HCO3] + 2 [CO3]
     * Ca = Ca_0 + (1 - f) x,  A = A_0 + 2 x
     * </pre>
     *
     * a quadratic in Ca.
     *
     * @param ph of the chamber, total scale; a meter set with NBS buffers shows 0.13 more
     * @param alkalinity A_0 of the feed
     * @param calcium Ca_0 of the feed
     * @param magnesiumShare f, the share of the dissolved carbonate that is magnesium's
     * @return x, 0 where the feed is saturated as it comes
     * @source equilibrium of aragonite and carbonic acid
     * @validity pH 5.5 to 7.5
     */
    @Unit("mol/m^3")
    public double saturatedAtPh(
            @Unit("1") double ph,
            @Unit("mol/m^3") double alkalinity,
            @Unit("mol/m^3") double calcium,
            @Unit("1") double magnesiumShare) {
        Bounds.within(ph, "1", 3, 9, "pH of the chamber");
        checkFeed(alkalinity, calcium, magnesiumShare);
        double calciumShare = 1 - magnesiumShare;
        double product = aragonite * (hydrogen(ph) / second + 2); // Ca times A at saturation
        // 2/s Ca^2 + (A_0 - 2 Ca_0 / s) Ca - product = 0
        double linear = alkalinity - 2 * calcium / calciumShare;
        double root = Math.sqrt(linear * linear + 8 * product / calciumShare);
        double saturated = linear > 0 ? 2 * product / (linear + root) : (root - linear) * calciumShare / 4;
        return Math.max(0, (saturated - calcium) / calciumShare);
    }

    /**
     * What would dissolve until aragonite is saturated, where gas holds the chamber's dissolved carbon dioxide.
     *
     * <pre>
     * [CO3] = Ksp / Ca,  [HCO3]^2 = [CO2] [CO3] K1/K2,  A = [HCO3] + 2 [CO3]
     * Ca = Ca_0 + (1 - f) x,  A = A_0 + 2 x
     * </pre>
     *
     * a quartic in the root of Ca with one positive root.
     *
     * @param carbonDioxide dissolved CO2 of the chamber: solubility times partial pressure
     * @param alkalinity A_0 of the feed
     * @param calcium Ca_0 of the feed
     * @param magnesiumShare f
     * @return x, 0 where the feed is saturated as it comes
     * @source equilibrium of aragonite and carbonic acid
     * @validity where the pH comes out at 5.5 to 7.5: partial pressures of 0.005 atm and more
     */
    @Unit("mol/m^3")
    public double saturatedAtCarbonDioxide(
            @Unit("mol/m^3") double carbonDioxide,
            @Unit("mol/m^3") double alkalinity,
            @Unit("mol/m^3") double calcium,
            @Unit("1") double magnesiumShare) {
        Bounds.within(carbonDioxide, "mol/m^3", 0, 1000, "dissolved carbon dioxide");
        checkFeed(alkalinity, calcium, magnesiumShare);
        double calciumShare = 1 - magnesiumShare;
        // with y^2 = Ca: a y^4 + b y^2 - c y - d = 0
        double a = 2 / calciumShare;
        double b = alkalinity - a * calcium;
        double c = Math.sqrt(carbonDioxide * first / second * aragonite);
        double d = 2 * aragonite;
        // Fujiwara's bound; from beyond the only positive root Newton's steps never overshoot
        double y = 2 * Math.max(Math.sqrt(Math.abs(b) / a), Math.max(Math.cbrt(c / a), Math.sqrt(Math.sqrt(d / a))));
        for (int i = 0; i < 60; i++) {
            double square = y * y;
            double step = (square * (a * square + b) - c * y - d) / (y * (4 * a * square + 2 * b) - c);
            y -= step;
            if (!(step > 1e-13 * y)) {
                break;
            }
        }
        return Math.max(0, (y * y - calcium) / calciumShare);
    }

    /**
     * Share of the way to saturation that the effluent comes: a mixed chamber in which gravel dissolves in proportion
     * to what is missing.
     *
     * <pre>F x = k m (x_sat - x):  x / x_sat = k m / (F + k m)</pre>
     *
     * @param flow F
     * @param mediaMass m of gravel
     * @param rateConstant k, see {@link #RATE_USUAL}
     * @return share, 1 where nothing flows, 0 without gravel (and where there is neither)
     * @source first-order approach to saturation; the order is common practice, not measured here
     * @validity recirculating chambers
     */
    @Unit("1")
    public static double approach(
            @Unit("m^3/s") double flow, @Unit("kg") double mediaMass, @Unit("m^3/(kg*s)") double rateConstant) {
        Bounds.within(flow, "m^3/s", 0, 1, "flow through the chamber");
        Bounds.within(mediaMass, "kg", 0, 1e5, "mass of gravel");
        Bounds.within(rateConstant, "m^3/(kg*s)", 0, 1, "rate constant of dissolution");
        double dissolving = rateConstant * mediaMass;
        return dissolving <= 0 ? 0 : dissolving / (flow + dissolving);
    }

    /**
     * Carbonate the chamber gives the tank.
     *
     * <pre>F x = F x_sat k m / (F + k m)</pre>
     *
     * Alkalinity is twice that, calcium 1 - f and magnesium f of it.
     *
     * @param flow F
     * @param mediaMass m of gravel
     * @param rateConstant k
     * @param saturated x_sat
     * @return amount of carbonate per time; 0 without flow or gravel
     * @source as {@link #approach}
     * @validity as {@link #approach}
     */
    @Unit("mol/s")
    public static double supply(
            @Unit("m^3/s") double flow,
            @Unit("kg") double mediaMass,
            @Unit("m^3/(kg*s)") double rateConstant,
            @Unit("mol/m^3") double saturated) {
        Bounds.within(saturated, "mol/m^3", 0, 1e6, "carbonate dissolved at saturation");
        return flow * saturated * approach(flow, mediaMass, rateConstant);
    }

    /**
     * Inorganic carbon of water of a known pH.
     *
     * <pre>C = A (H^2 + K1 H + K1 K2) / (K1 H + 2 K1 K2)</pre>
     *
     * @param alkalinity A, all of it carbonate's
     * @param ph total scale
     * @return concentration
     * @source equilibrium of carbonic acid
     * @validity pH 5.5 to 7.5
     */
    @Unit("mol/m^3")
    public double inorganicCarbonAtPh(@Unit("mol/m^3") double alkalinity, @Unit("1") double ph) {
        Bounds.within(alkalinity, "mol/m^3", 0, 1e6, "alkalinity");
        Bounds.within(ph, "1", 3, 9, "pH of the chamber");
        double h = hydrogen(ph);
        return alkalinity * (h * h + first * (h + second)) / (first * (h + 2 * second));
    }

    /**
     * Inorganic carbon of water of known dissolved carbon dioxide.
     *
     * <pre>
     * C = [CO2] + [HCO3] + [CO3],  A = [HCO3] + 2 [CO3],  [CO3] = [HCO3]^2 K2 / (K1 [CO2])
     * </pre>
     *
     * @param alkalinity A, all of it carbonate's
     * @param carbonDioxide dissolved CO2
     * @return concentration
     * @source equilibrium of carbonic acid
     * @validity pH 5.5 to 7.5
     */
    @Unit("mol/m^3")
    public double inorganicCarbonAtCarbonDioxide(
            @Unit("mol/m^3") double alkalinity, @Unit("mol/m^3") double carbonDioxide) {
        Bounds.within(alkalinity, "mol/m^3", 0, 1e6, "alkalinity");
        Bounds.within(carbonDioxide, "mol/m^3", 0, 1000, "dissolved carbon dioxide");
        double scale = first * carbonDioxide;
        // 2 K2/(K1 CO2) b^2 + b - A = 0, its root without cancellation
        double root = Math.sqrt(scale * (scale + 8 * second * alkalinity));
        double bicarbonate = scale <= 0 ? 0 : 2 * alkalinity * scale / (scale + root);
        double carbonate = (alkalinity - bicarbonate) / 2;
        return carbonDioxide + bicarbonate + carbonate;
    }

    /**
     * Carbon dioxide the bottle must give each volume of water: what the effluent holds more than the feed and the
     * gravel brought. At least one mole for each mole dissolved, two of alkalinity, where the feed has more alkalinity
     * than carbon; the rest leaves with the effluent and lowers the tank's pH.
     *
     * <pre>C_out - C_0 - x</pre>
     *
     * @param effluentCarbon C_out
     * @param feedCarbon C_0
     * @param dissolved x
     * @return amount per volume, not below 0
     * @source mass balance
     * @validity no gas lost
     */
    @Unit("mol/m^3")
    public static double carbonDioxideUsed(
            @Unit("mol/m^3") double effluentCarbon,
            @Unit("mol/m^3") double feedCarbon,
            @Unit("mol/m^3") double dissolved) {
        Bounds.notNegative(effluentCarbon, "mol/m^3", "inorganic carbon of the effluent");
        Bounds.notNegative(feedCarbon, "mol/m^3", "inorganic carbon of the feed");
        Bounds.notNegative(dissolved, "mol/m^3", "carbonate dissolved");
        return Math.max(0, effluentCarbon - feedCarbon - dissolved);
    }

    private double hydrogen(double ph) {
        return Math.pow(10, -ph) * density;
    }

    private static void checkFeed(double alkalinity, double calcium, double magnesiumShare) {
        Bounds.within(alkalinity, "mol/m^3", 0, 1e4, "alkalinity of the feed");
        Bounds.within(calcium, "mol/m^3", 0, 1e4, "calcium of the feed");
        Bounds.within(magnesiumShare, "1", 0, 0.5, "magnesium's share of the gravel");
    }
}

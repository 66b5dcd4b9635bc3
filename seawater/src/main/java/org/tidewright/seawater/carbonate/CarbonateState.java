package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Everything about the carbonate system of one water at one temperature and one atmosphere. Amounts are per kilogram of
 * seawater. Obtained from {@link CarbonateSystem}; unchanging for all who hold one.
 */
public final class CarbonateState {
    // Refilled by the batch, which never hands its state out.
    private final Equilibria e;
    private double h;
    private double alkalinity;
    private double dic;
    private double perCarbon; // 1 / (h^2 + K1 h + K1 K2)
    private double perPhosphate; // 1 / (h^3 + KP1 h^2 + KP1 KP2 h + KP1 KP2 KP3)

    CarbonateState(Equilibria equilibria) {
        e = equilibria;
    }

    void set(double hydrogen, double totalAlkalinity, double inorganicCarbon) {
        h = hydrogen;
        alkalinity = totalAlkalinity;
        dic = inorganicCarbon;
        perCarbon = 1 / (h * h + e.k1 * (h + e.k2));
        perPhosphate = 1 / (e.kPhosphate1 * (e.kPhosphate2 * (e.kPhosphate3 + h) + h * h) + h * h * h);
    }

    /** Alkalinity follows from hydrogen ion and inorganic carbon. */
    void setFromCarbon(double hydrogen, double inorganicCarbon) {
        e.balance(hydrogen);
        set(hydrogen, inorganicCarbon * e.carbonateCharge(hydrogen) + e.otherAlkalinity, inorganicCarbon);
    }

    /** Any of the numbers a batch can fill a column with, in the unit of the method it names. */
    @Unit("*")
    public double get(CarbonateQuantity quantity) {
        return switch (quantity) {
            case ALKALINITY -> alkalinity;
            case INORGANIC_CARBON -> dic;
            case PH_TOTAL -> ph();
            case PH_FREE -> ph(PhScale.FREE);
            case PH_SEAWATER -> ph(PhScale.SEAWATER);
            case PH_NBS -> ph(PhScale.NBS);
            case FUGACITY -> fugacity();
            case PARTIAL_PRESSURE -> partialPressure();
            case CARBON_DIOXIDE -> carbonDioxide();
            case BICARBONATE -> bicarbonate();
            case CARBONATE -> carbonate();
            case BORATE -> borate();
            case BORIC_ACID -> boricAcid();
            case HYDROXIDE -> hydroxide();
            case FREE_HYDROGEN -> freeHydrogen();
            case PHOSPHORIC_ACID -> phosphoricAcid();
            case DIHYDROGEN_PHOSPHATE -> dihydrogenPhosphate();
            case HYDROGEN_PHOSPHATE -> hydrogenPhosphate();
            case PHOSPHATE_ION -> phosphateIon();
            case SILICATE_ION -> silicateIon();
            case UNIONISED_AMMONIA -> unionisedAmmonia();
            case UNIONISED_SHARE -> unionisedShare();
            case AMMONIUM -> ammonium();
            case BISULFATE -> bisulfate();
            case HYDROGEN_FLUORIDE -> hydrogenFluoride();
            case ARAGONITE_SATURATION -> aragoniteSaturation();
            case CALCITE_SATURATION -> calciteSaturation();
            case REVELLE_FACTOR -> revelleFactor();
        };
    }

    /** Of the water, ITS-90. */
    @Unit("degC")
    public double temperature() {
        return e.conditions.t;
    }

    /** PSS-78. */
    @Unit("1")
    public double practicalSalinity() {
        return e.conditions.s;
    }

    /** Total alkalinity by the definition of Dickson 1981, Deep-Sea Res. 28A, 609-623. */
    @Unit("mol/kg")
    public double alkalinity() {
        return alkalinity;
    }

    /** Dissolved inorganic carbon: carbon dioxide, bicarbonate and carbonate together. */
    @Unit("mol/kg")
    public double inorganicCarbon() {
        return dic;
    }

    /** pH on the total scale. */
    @Unit("1")
    public double ph() {
        return -Math.log10(h);
    }

    /** pH on any scale. */
    @Unit("1")
    public double ph(PhScale scale) {
        return switch (scale) {
            case TOTAL -> ph();
            case FREE -> -Math.log10(h / e.totalOverFree);
            case SEAWATER -> -Math.log10(h * e.seawaterOverFree / e.totalOverFree);
            case NBS -> -Math.log10(h * e.seawaterOverFree / e.totalOverFree * PhScale.electrodeFactor(e.conditions));
        };
    }

    /** Free hydrogen ion. */
    @Unit("mol/kg")
    public double freeHydrogen() {
        return h / e.totalOverFree;
    }

    /** Hydroxide ion. */
    @Unit("mol/kg")
    public double hydroxide() {
        return e.kWater / h;
    }

    /** Dissolved carbon dioxide, CO2 and H2CO3 together. */
    @Unit("mol/kg")
    public double carbonDioxide() {
        return dic * h * h * perCarbon;
    }

    /** Fugacity of the carbon dioxide. */
    @Unit("atm")
    public double fugacity() {
        return carbonDioxide() / e.k0;
    }

    /** Partial pressure of carbon dioxide in air in equilibrium with the water. */
    @Unit("atm")
    public double partialPressure() {
        return fugacity() / CarbonDioxide.fugacityFactor(e.conditions.t);
    }

    /** Share of carbon dioxide in the dry air in equilibrium with the water, at the given air pressure. */
    @Unit("1")
    public double shareOfDryAir(@Unit("Pa") double pressure) {
        return CarbonDioxide.shareOfDryAir(partialPressure(), temperature(), practicalSalinity(), pressure);
    }

    /** HCO3-. */
    @Unit("mol/kg")
    public double bicarbonate() {
        return dic * e.k1 * h * perCarbon;
    }

    /** CO3--. */
    @Unit("mol/kg")
    public double carbonate() {
        return dic * e.k1 * e.k2 * perCarbon;
    }

    /** B(OH)4-. */
    @Unit("mol/kg")
    public double borate() {
        return e.borate * e.kBorate / (e.kBorate + h);
    }

    /** B(OH)3. */
    @Unit("mol/kg")
    public double boricAcid() {
        return e.borate * h / (e.kBorate + h);
    }

    /**
     * Borate's part of the alkalinity: what a test of alkalinity counts that no coral can build with.
     *
     * @throws IllegalArgumentException where there is no alkalinity to have a part of
     */
    @Unit("1")
    public double borateShareOfAlkalinity() {
        return borate() / Bounds.positive(alkalinity, "mol/kg", "alkalinity");
    }

    /** H3PO4. */
    @Unit("mol/kg")
    public double phosphoricAcid() {
        return e.phosphate * h * h * h * perPhosphate;
    }

    /** H2PO4-. */
    @Unit("mol/kg")
    public double dihydrogenPhosphate() {
        return e.phosphate * e.kPhosphate1 * h * h * perPhosphate;
    }

    /** HPO4--. */
    @Unit("mol/kg")
    public double hydrogenPhosphate() {
        return e.phosphate * e.kPhosphate1 * e.kPhosphate2 * h * perPhosphate;
    }

    /** PO4---. */
    @Unit("mol/kg")
    public double phosphateIon() {
        return e.phosphate * e.kPhosphate1 * e.kPhosphate2 * e.kPhosphate3 * perPhosphate;
    }

    /** SiO(OH)3-. */
    @Unit("mol/kg")
    public double silicateIon() {
        return e.silicate * e.kSilicate / (e.kSilicate + h);
    }

    /** Un-ionised NH3, the poisonous part of the ammonia. */
    @Unit("mol/kg")
    public double unionisedAmmonia() {
        return e.ammonia * unionisedShare();
    }

    /** Share of ammonia that is un-ionised at this pH, whether there is any or not. */
    @Unit("1")
    public double unionisedShare() {
        return e.kAmmonia / (e.kAmmonia + h);
    }

    /** NH4+. */
    @Unit("mol/kg")
    public double ammonium() {
        return e.ammonia * h / (e.kAmmonia + h);
    }

    /** HSO4-. */
    @Unit("mol/kg")
    public double bisulfate() {
        return e.sulfate * freeHydrogen() / (e.kSulfateFree + freeHydrogen());
    }

    /** HF. */
    @Unit("mol/kg")
    public double hydrogenFluoride() {
        return e.fluoride * freeHydrogen() / (e.kFluorideFree + freeHydrogen());
    }

    /** Total borate the state was computed with. */
    @Unit("mol/kg")
    public double totalBorate() {
        return e.borate;
    }

    /** Calcium the state was computed with. */
    @Unit("mol/kg")
    public double calcium() {
        return e.calcium;
    }

    /** Sulfate and bisulfate. */
    @Unit("mol/kg")
    public double totalSulfate() {
        return e.sulfate;
    }

    /** Fluoride and hydrogen fluoride. */
    @Unit("mol/kg")
    public double totalFluoride() {
        return e.fluoride;
    }

    /** [Ca++][CO3--] over aragonite's solubility product: above 1 it can grow, below 1 it dissolves. */
    @Unit("1")
    public double aragoniteSaturation() {
        return e.calcium * carbonate() / Math.exp(CalciumCarbonate.lnAragonite(e.conditions));
    }

    /** [Ca++][CO3--] over calcite's solubility product. */
    @Unit("1")
    public double calciteSaturation() {
        return e.calcium * carbonate() / Math.exp(CalciumCarbonate.lnCalcite(e.conditions));
    }

    /** How the water resists a change of carbon or alkalinity. */
    public BufferFactors bufferFactors() {
        e.balance(h);
        double charge = e.k1 * (h + 2 * e.k2) * perCarbon;
        double byLogHydrogen = h * (dic * (e.k1 - charge * (2 * h + e.k1)) * perCarbon + e.otherSlope);
        double logHydrogenByCarbon = -charge / byLogHydrogen;
        double logHydrogenByAlkalinity = 1 / byLogHydrogen;
        // ln(share) falls or rises with ln h by these.
        double carbonDioxideByLogHydrogen = charge;
        double carbonateByLogHydrogen = -h * (2 * h + e.k1) * perCarbon;
        return new BufferFactors(
                1 / (1 / dic + carbonDioxideByLogHydrogen * logHydrogenByCarbon),
                1 / (carbonDioxideByLogHydrogen * logHydrogenByAlkalinity),
                1 / logHydrogenByCarbon,
                1 / logHydrogenByAlkalinity,
                1 / (1 / dic + carbonateByLogHydrogen * logHydrogenByCarbon),
                1 / (carbonateByLogHydrogen * logHydrogenByAlkalinity));
    }

    /** Relative rise of carbon dioxide per relative rise of inorganic carbon, at the same alkalinity. */
    @Unit("1")
    public double revelleFactor() {
        e.balance(h);
        double charge = e.k1 * (h + 2 * e.k2) * perCarbon;
        double byLogHydrogen = h * (dic * (e.k1 - charge * (2 * h + e.k1)) * perCarbon + e.otherSlope);
        return 1 - dic * charge * charge / byLogHydrogen;
    }
}

package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.gas.CarbonDioxide;

/**
 * All dissociation constants at one temperature and salinity, on the total scale, with the totals they act on; and the
 * alkalinity of everything but carbonate at any hydrogen ion concentration. Refilled for each point of a batch, hence
 * not final; it never leaves the package.
 */
final class Equilibria {
    final Conditions conditions = new Conditions();

    double k0; // mol/(kg atm)
    double k1;
    double k2;
    double kBorate;
    double kWater;
    double kPhosphate1;
    double kPhosphate2;
    double kPhosphate3;
    double kSilicate;
    double kAmmonia;
    double kSulfateFree; // on the free scale, as the next
    double kFluorideFree;

    double borate;
    double calcium;
    double phosphate;
    double silicate;
    double ammonia;
    double sulfate;
    double fluoride;

    /** [H+] on the total scale over free [H+]. */
    double totalOverFree;

    /** [H+] on the seawater scale over free [H+]. */
    double seawaterOverFree;

    /** Alkalinity apart from carbonate's, and its derivative by h, as {@link #balance} last found them. */
    double otherAlkalinity;

    double otherSlope;

    /** Alkalinity of carbonate and its derivative, as {@link AlkalinityBalance} last found them. */
    double carbonateAlkalinity;

    double carbonateSlope;

    void set(double temperature, double practicalSalinity, CarbonicAcid acid) {
        conditions.set(temperature, practicalSalinity);
        Conditions c = conditions;
        sulfate = TotalConcentrations.sulfate(practicalSalinity);
        fluoride = TotalConcentrations.fluoride(practicalSalinity);
        kSulfateFree = Math.exp(Bisulfate.lnKPerWater(c)) * c.waterShare;
        kFluorideFree = Math.exp(HydrogenFluoride.lnKPerWater(c)) * c.waterShare;
        totalOverFree = 1 + sulfate / kSulfateFree;
        seawaterOverFree = totalOverFree + fluoride / kFluorideFree;
        double toTotal = totalOverFree / seawaterOverFree;

        double ofSource = acid.onSeawaterScale() ? toTotal : 1;
        k0 = CarbonDioxide.solubility(temperature, practicalSalinity);
        k1 = Math.exp(acid.lnK1(c)) * ofSource;
        k2 = Math.exp(acid.lnK2(c)) * ofSource;
        kBorate = Math.exp(BoricAcid.lnK(c));
        kWater = Math.exp(WaterIonisation.lnKSeawaterScale(c)) * toTotal;
        kPhosphate1 = Math.exp(PhosphoricAcid.lnK1SeawaterScale(c)) * toTotal;
        kPhosphate2 = Math.exp(PhosphoricAcid.lnK2SeawaterScale(c)) * toTotal;
        kPhosphate3 = Math.exp(PhosphoricAcid.lnK3SeawaterScale(c)) * toTotal;
        kSilicate = Math.exp(SilicicAcid.lnKSeawaterScalePerWater(c)) * c.waterShare * toTotal;
        kAmmonia = Ammonia.kPerWater(c) * c.waterShare;
    }

    void setTotals(double newBorate, double newCalcium, double newPhosphate, double newSilicate, double newAmmonia) {
        borate = newBorate;
        calcium = newCalcium;
        phosphate = newPhosphate;
        silicate = newSilicate;
        ammonia = newAmmonia;
    }

    /**
     * The alkalinity of the definition of Dickson 1981 (Deep-Sea Res. 28A, 609-623) without carbonate's: B(OH)4- + OH- +
     * HPO4-- + 2 PO4--- + SiO(OH)3- + NH3 - H+ - HSO4- - HF - H3PO4, and its derivative. As a function of h each term
     * falls and is convex, which is what makes {@link AlkalinityBalance} safe.
     */
    void balance(double h) {
        double free = h / totalOverFree;
        double perBorate = 1 / (kBorate + h);
        double perSulfate = 1 / (kSulfateFree + free);
        double perFluoride = 1 / (kFluorideFree + free);
        double boron = borate * kBorate * perBorate;
        double hydroxide = kWater / h;
        otherAlkalinity = boron + hydroxide - free - sulfate * free * perSulfate - fluoride * free * perFluoride;
        otherSlope = -boron * perBorate
                - hydroxide / h
                - (1
                                + sulfate * kSulfateFree * perSulfate * perSulfate
                                + fluoride * kFluorideFree * perFluoride * perFluoride)
                        / totalOverFree;
        if (phosphate != 0) {
            double k12 = kPhosphate1 * kPhosphate2;
            double k123 = k12 * kPhosphate3;
            double below = k123 + h * (k12 + h * (kPhosphate1 + h));
            double charge = (2 * k123 + h * (k12 - h * h)) / below;
            otherAlkalinity += phosphate * charge;
            otherSlope += phosphate * (k12 - 3 * h * h - charge * (k12 + h * (2 * kPhosphate1 + 3 * h))) / below;
        }
        if (silicate != 0) {
            double per = 1 / (kSilicate + h);
            otherAlkalinity += silicate * kSilicate * per;
            otherSlope -= silicate * kSilicate * per * per;
        }
        if (ammonia != 0) {
            double per = 1 / (kAmmonia + h);
            otherAlkalinity += ammonia * kAmmonia * per;
            otherSlope -= ammonia * kAmmonia * per * per;
        }
    }

    /** The least that the acids other than water's can add: all of them protonated. */
    double leastOther() {
        return -(phosphate + sulfate + fluoride);
    }

    /** The most that the acids other than carbonic acid and water's can add: all of them dissociated. */
    double mostOther() {
        return borate + 2 * phosphate + silicate + ammonia;
    }

    /** Alkalinity of carbonate per mole of inorganic carbon. */
    double carbonateCharge(double h) {
        return k1 * (h + 2 * k2) / (h * h + k1 * (h + k2));
    }

    /** Share of the inorganic carbon that is dissolved CO2. */
    double carbonDioxideShare(double h) {
        return h * h / (h * h + k1 * (h + k2));
    }

    /** Share of the inorganic carbon that is carbonate ion. */
    double carbonateShare(double h) {
        return k1 * k2 / (h * h + k1 * (h + k2));
    }
}

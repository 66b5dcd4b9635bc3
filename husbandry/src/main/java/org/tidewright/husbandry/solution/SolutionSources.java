package org.tidewright.husbandry.solution;

import java.util.List;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;

/** What the numbers about solutions rest on, lettered as they are called upon. */
final class SolutionSources {
    private final Sources sources = new Sources();

    String masses() {
        return sources.key(
                "Masses of a mole and what a mole of each salt brings",
                Basis.PUBLISHED,
                "IUPAC standard atomic weights of 2021; stoichiometry");
    }

    String purity() {
        return sources.key(
                "Purity of salts as they are sold, error of a kitchen scale and a jug",
                Basis.COMMON_PRACTICE,
                "food grade, kept closed; calcium chloride “dihydrate” holds 72–78 % of CaCl2; scale ± 0.5 g, jug ± 1 %");
    }

    String solubility() {
        return sources.key(
                "Solubility of salts with temperature",
                Basis.PUBLISHED,
                "CRC Handbook of Chemistry and Physics, 98th edition, aqueous solubility of inorganic compounds");
    }

    String limewater() {
        return sources.key(
                "Saturated limewater, 41 meq/L at 25 °C, less where it is warmer",
                Basis.PUBLISHED,
                "Bates, Bower and Smith 1956; change with temperature from memory");
    }

    String density() {
        return sources.key("Density of solutions", Basis.PUBLISHED, "Laliberté 2009, J. Chem. Eng. Data 54, 1725–1760");
    }

    String heat() {
        return sources.key(
                "Heat of dissolving",
                Basis.PUBLISHED,
                "Parker 1965 and the NBS tables of 1982, as the CRC Handbook has them, in very much water; good to a tenth");
    }

    String planned() {
        return sources.key("What is dosed a day", Basis.YOUR_PLAN, "its dosing");
    }

    String use(DailyUse use) {
        return sources.key("Use of " + use.supply().words() + " a day", use.basis(), use.from());
    }

    String label() {
        return sources.key(
                "What a label says of a solution’s strength",
                Basis.COMMON_PRACTICE,
                "± 5 %, until your own test says more");
    }

    String errors() {
        return sources.key(
                "Doubt of a strength from your own test",
                Basis.COMPUTED,
                "from the errors of the readings, the volume of water and the dose, which do not depend on one another");
    }

    String balance() {
        return sources.key(
                "What stays in the water",
                Basis.COMPUTED,
                "from the doses; all alkalinity laid down as (Ca, Mg)CO3, what evaporates replaced by fresh water");
    }

    String sea() {
        return sources.key(
                "Composition of sea salt", Basis.PUBLISHED, "Millero, Feistel, Wright and McDougall 2008, table 4");
    }

    String apart() {
        return sources.key(
                "Alkalinity and calcium apart by 15 minutes and in different places",
                Basis.COMMON_PRACTICE,
                "into strong flow");
    }

    List<Source> all() {
        return sources.all();
    }
}

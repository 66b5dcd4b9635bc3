package org.tidewright.husbandry.nutrient;

import java.util.List;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.twin.contract.Parameter;

/** What the twin does not know exactly about nutrients, in units a keeper reads. */
final class Unknowns {
    private static final double DAY = 86_400;

    /** How the names of those that matter here begin. */
    private static final List<String> MATTER = List.of(
            "food ",
            "denitrification",
            "phosphate on rock",
            "decay",
            "settling",
            "algae in",
            "fish, share",
            "fish, ammonia");

    private Unknowns() {}

    static List<NutrientReport.Unknown> of(List<Parameter> parameters) {
        return parameters.stream().filter(Unknowns::matters).map(Unknowns::told).toList();
    }

    private static boolean matters(Parameter parameter) {
        String name = parameter.name();
        return MATTER.stream().anyMatch(name::startsWith)
                || name.contains("share taken in one pass")
                || name.contains("most of the waste it can take")
                || name.contains("share that foam can take")
                || name.contains("usable share of the load");
    }

    private static NutrientReport.Unknown told(Parameter parameter) {
        String unit = parameter.unit();
        double factor = switch (unit) {
            case "1/s" -> DAY;
            case "mol/s" -> 1000 * DAY;
            case "mol/m^3" -> 1000;
            case "mol/(m^2*s)" -> 1e6;
            default -> 1;
        };
        String shown = switch (unit) {
            case "1" -> "";
            case "1/s" -> "a day";
            case "mol/s" -> "mmol a day";
            case "mol/m^3" -> "µmol/L";
            case "mol/(m^2*s)" -> "µmol/m²/s";
            default -> unit.replace('*', '·');
        };
        String range = number(factor * parameter.low()) + "–" + number(factor * parameter.high());
        return new NutrientReport.Unknown(
                parameter.name(),
                number(factor * parameter.usual()),
                range,
                shown,
                parameter.basis(),
                parameter.source());
    }

    /** Two digits that count. */
    private static String number(double value) {
        if (value == 0) {
            return "0";
        }
        int decimals = (int) Math.max(0, 1 - Math.floor(Math.log10(Math.abs(value)) + 1e-9));
        String told = FigureText.number(value, decimals);
        return told.contains(".") ? told.replaceAll("\\.?0+$", "") : told;
    }
}

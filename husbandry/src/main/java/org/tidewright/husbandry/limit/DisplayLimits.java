package org.tidewright.husbandry.limit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Limits;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.gas.MolarMass;
import org.tidewright.twin.tank.Water;

/**
 * The bounds of the display: at the first a keeper must act, at the second animals come to harm. Temperatures in °C, oxygen
 * in kg/m³.
 */
public record DisplayLimits(
        Limit actColder, Limit harmColder, Limit actWarmer, Limit harmWarmer, Limit actOxygen, Limit harmOxygen) {
    private static final double ACT_COLDER = 23;
    private static final double HARM_COLDER = 20;
    private static final double ACT_WARMER = 28;
    private static final double HARM_WARMER = 30;
    private static final double ACT_OXYGEN = 0.5;
    private static final double HARM_OXYGEN = 0.3;

    /** The bounds of a plan: its own where it states them. */
    public static DisplayLimits of(Plan plan, Sources sources) {
        Limits stated = plan.limits();
        double saturation = Water.of(plan).saturation() * MolarMass.OXYGEN;
        return new DisplayLimits(
                temperature("act", stated == null ? null : stated.actColder(), ACT_COLDER, true, sources),
                temperature("harm", stated == null ? null : stated.harmColder(), HARM_COLDER, true, sources),
                temperature("act", stated == null ? null : stated.actWarmer(), ACT_WARMER, false, sources),
                temperature("harm", stated == null ? null : stated.harmWarmer(), HARM_WARMER, false, sources),
                oxygen("act", stated == null ? null : stated.actOxygen(), ACT_OXYGEN, saturation, sources),
                oxygen("harm", stated == null ? null : stated.harmOxygen(), HARM_OXYGEN, saturation, sources));
    }

    public List<Limit> ofTemperature() {
        return List.of(actColder, harmColder, actWarmer, harmWarmer);
    }

    public List<Limit> ofOxygen() {
        return List.of(actOxygen, harmOxygen);
    }

    private static Limit temperature(
            String words, @Nullable Amount stated, double usual, boolean below, Sources sources) {
        if (stated != null) {
            return new Limit(words, stated.in("degC"), below, yours(sources));
        }
        String key = sources.key(
                "Temperature: act under 23 °C or over 28 °C, harm under 20 °C or over 30 °C",
                Basis.COMMON_PRACTICE,
                "corals decline within days at 31–32 °C, most fish die at 34–35 °C (from memory)");
        return new Limit(words, usual, below, key);
    }

    private static Limit oxygen(
            String words, @Nullable Amount stated, double usual, double saturation, Sources sources) {
        if (stated != null) {
            return new Limit(words, stated.in("1") * saturation, true, yours(sources));
        }
        String key = sources.key(
                "Oxygen: act under 50 % of saturation, harm under 30 %",
                Basis.PUBLISHED,
                "reef fish keep their uptake down to 13–34 % (Nilsson and Östlund-Nilsson 2004), corals lose tissue at"
                        + " 2–4 mg/L by time (Haas et al. 2014); the two marks themselves are practice");
        return new Limit(words, usual * saturation, true, key);
    }

    private static String yours(Sources sources) {
        return sources.key("Limits", Basis.YOUR_PLAN, "limits");
    }
}

package org.tidewright.husbandry.quarantine;

import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Days a display stands without fish until a parasite of theirs has starved. No figure is sure: strains differ, and stages
 * that rest where oxygen is short outlast them all.
 *
 * @param shortest what the published stages of its life take, with a margin where that is known
 * @param customary what careful keepers wait
 * @param longest customary, and for white spot further the rest that cysts were kept in and came back from
 */
public record FallowSpan(
        Parasite parasite,
        @Unit("degC") double temperature,
        @Unit("d") double shortest,
        @Unit("d") double customary,
        @Unit("d") double longest) {

    /**
     * Stages of Cryptocaryon irritans off the fish: the last tomont releases after 28 days, a theront swims for 2. Colorni
     * 1985, Dis. Aquat. Org. 1, 19-22.
     */
    @Unit("d")
    static final double LAST_TOMONT = 28;

    @Unit("d")
    static final double THERONT = 2;

    /** On a single study's extremes; an estimate. */
    private static final double MARGIN = 1.25;

    /**
     * 72 days claimed of tomonts (Colorni and Burgess 1997, Aquar. Sci. Conserv. 1, 217-238, from memory) and the theront's 2,
     * rounded up as keepers do: 76 days, or ten to eleven weeks.
     */
    @Unit("d")
    static final double CUSTOMARY_WHITE_SPOT = 76;

    /**
     * Tomonts kept for four weeks at 24 % of the oxygen of air did not develop, and released most of their theronts 10 to 11
     * days after it was back. Yoshinaga 2001, Fish Pathol. 36, 231-235.
     */
    @Unit("d")
    static final double DORMANT = 28 + 11;

    /** A whole cycle of Amyloodinium ocellatum takes 7 to 20 days: Virginia Cooperative Extension 600-200. */
    @Unit("d")
    static final double VELVET_CYCLE = 20;

    /** Its dinospores can infect for about 15 days; secondary, after reviews. */
    @Unit("d")
    static final double DINOSPORE = 15;

    /** Six weeks; common practice for velvet, brooklynella and flukes. */
    @Unit("d")
    static final double SIX_WEEKS = 42;

    /** Four weeks; the low end of common practice for brooklynella and flukes. */
    @Unit("d")
    static final double FOUR_WEEKS = 28;

    /** Below it a half is added for white spot and velvet; an estimate, of the order of what Cheung et al. 1979 saw. */
    @Unit("degC")
    static final double COOL = 22;

    private static final double COOL_FACTOR = 1.5;

    /** Common practice for flukes holds at 24 to 28 °C. */
    private static final double FLUKES_WARM = 24;

    /** From the coldest to the warmest water white spot infects in: University of Florida extension bulletin FA164. */
    @Unit("degC")
    public static final double COLDEST = 15;

    @Unit("degC")
    public static final double WARMEST = 30;

    /** The span for a parasite in water of a temperature. */
    public static FallowSpan of(Parasite parasite, @Unit("degC") double temperature) {
        Bounds.waterTemperature(temperature);
        double cool = temperature < COOL ? COOL_FACTOR : 1;
        return switch (parasite) {
            case WHITE_SPOT, UNKNOWN ->
                new FallowSpan(
                        parasite,
                        temperature,
                        Math.ceil(cool * MARGIN * (LAST_TOMONT + THERONT)),
                        Math.ceil(cool * CUSTOMARY_WHITE_SPOT),
                        Math.ceil(cool * CUSTOMARY_WHITE_SPOT + DORMANT));
            case VELVET ->
                new FallowSpan(
                        parasite,
                        temperature,
                        Math.ceil(cool * (VELVET_CYCLE + DINOSPORE)),
                        Math.ceil(cool * SIX_WEEKS),
                        Math.ceil(cool * SIX_WEEKS));
            case BROOKLYNELLA -> new FallowSpan(parasite, temperature, FOUR_WEEKS, SIX_WEEKS, SIX_WEEKS);
            case FLUKES -> {
                double slower = Math.max(1, firstHatch(temperature) / firstHatch(FLUKES_WARM));
                yield new FallowSpan(
                        parasite,
                        temperature,
                        Math.ceil(slower * FOUR_WEEKS),
                        Math.ceil(slower * SIX_WEEKS),
                        Math.ceil(slower * SIX_WEEKS));
            }
        };
    }

    /**
     * Days from the laying of a skin fluke's eggs to the first hatching.
     *
     * <pre>d = 5 (16/5)^((28 - T)/14)</pre>
     *
     * @param temperature T
     * @source Ernst et al. 2005, J. Fish Dis. 28, 157-164, Benedenia seriolae: 5 days at 28 °C, 16 at 14 °C; a law of warmth
     *     drawn through these two
     * @validity 14 to 28 °C; none hatched at 30 °C
     */
    static @Unit("d") double firstHatch(@Unit("degC") double temperature) {
        return 5 * Math.pow(16.0 / 5, (28 - temperature) / 14);
    }

    /** Whether the water is as warm as the parasite is known to live in. */
    public boolean isKnownThere() {
        return temperature >= COLDEST && temperature <= WARMEST;
    }
}

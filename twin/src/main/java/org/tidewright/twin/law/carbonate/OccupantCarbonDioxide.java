package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Carbon dioxide a person breathes out, by body mass and activity. */
public final class OccupantCarbonDioxide {
    /** Activity asleep; Persily and de Jonge 2017, after the compendium of physical activities. */
    @Unit("1")
    public static final double ASLEEP = 0.95;

    /** Activity sitting still, 1.0 to 1.3: reading, watching. */
    @Unit("1")
    public static final double SITTING = 1.2;

    /** Activity of light work standing, 1.6 to 2.5: cooking, tending an aquarium; from memory. */
    @Unit("1")
    public static final double LIGHT_WORK = 2.0;

    /** Carbon dioxide given off over oxygen taken up, on a mixed diet: 0.85. */
    @Unit("1")
    public static final double RESPIRATORY_QUOTIENT = 0.85;

    private static final double GAS_CONSTANT = 8.314462618; // J/(mol K), or kPa L/(mol K)
    private static final double SECONDS_PER_DAY = 86_400;

    /** Oxygen for each joule: 0.000211 kPa L/K in a second for 1 MJ in a day, over the gas constant. */
    private static final double OXYGEN_PER_JOULE = 0.000211 / GAS_CONSTANT * SECONDS_PER_DAY / 1e6; // mol/J

    private OccupantCarbonDioxide() {}

    /** Whose metabolism at rest it is: a straight line in body mass for each sex and age. */
    public enum Person {
        GIRL_3_TO_10(0.085, 2.033),
        GIRL_10_TO_18(0.056, 2.898),
        WOMAN_18_TO_30(0.062, 2.036),
        WOMAN_30_TO_60(0.034, 3.538),
        WOMAN_OVER_60(0.038, 2.755),
        BOY_3_TO_10(0.095, 2.110),
        BOY_10_TO_18(0.074, 2.754),
        MAN_18_TO_30(0.063, 2.896),
        MAN_30_TO_60(0.048, 3.653),
        MAN_OVER_60(0.049, 2.459);

        private final double slope; // MJ/(kg d)
        private final double intercept; // MJ/d

        Person(double slope, double intercept) {
            this.slope = slope;
            this.intercept = intercept;
        }

        /**
         * Heat the body turns over at full rest.
         *
         * <pre>BMR = a m + b,  MJ/day</pre>
         *
         * @param mass m of the body
         * @return power
         * @source Schofield 1985, Hum. Nutr. Clin. Nutr. 39C, 5-41, as in Persily and de Jonge 2017, table 1; from
         *     memory
         * @validity healthy people; some 10 % either way between persons
         */
        @Unit("W")
        public double basalMetabolicRate(@Unit("kg") double mass) {
            Bounds.within(mass, "kg", 0, 500, "body mass");
            return (slope * mass + intercept) * 1e6 / SECONDS_PER_DAY;
        }
    }

    /**
     * Carbon dioxide given off. As an amount it does not depend on the room's temperature and pressure; the printed
     * form is the volume it takes there.
     *
     * <pre>V = RQ BMR M (T/P) 0.000211,  L/s with BMR in MJ/day, T in K, P in kPa;  n = V P / (R T)</pre>
     *
     * @param basalMetabolicRate BMR, see {@link Person}
     * @param activity M, metabolic rate over that at rest: {@link #ASLEEP}, {@link #SITTING}, {@link #LIGHT_WORK}
     * @return amount per time
     * @source Persily and de Jonge 2017, Indoor Air 27, 868-879, the form of ASTM D6245-18; from memory
     * @validity M 0.9 to 10, rested and fed people
     * @checkvalue Weir 1949 gives 20.4 kJ for a litre of oxygen at RQ 0.85; this constant, 20.3
     */
    @Unit("mol/s")
    public static double rate(@Unit("W") double basalMetabolicRate, @Unit("1") double activity) {
        Bounds.within(basalMetabolicRate, "W", 0, 1000, "metabolic rate at rest");
        Bounds.within(activity, "1", 0, 25, "activity");
        return RESPIRATORY_QUOTIENT * basalMetabolicRate * activity * OXYGEN_PER_JOULE;
    }
}

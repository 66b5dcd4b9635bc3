package org.tidewright.husbandry.quarantine;

/** What to mind at the acts of quarantine, told where they are advised. */
public final class Caution {
    /** Before a hand goes in. */
    public static final String HANDS =
            "Waterproof gloves, or no hand in the water while the skin has a cut: fish carry germs that"
                    + " get into wounds. Wash afterwards. A sore that does not heal belongs before a doctor who knows of the aquarium.";

    /** Before animals are caught. */
    public static final String VENOM =
            "Know who has venomous or cutting spines and where it is before you catch it, and use a"
                    + " firm container rather than a net. After a sting: poison centre or doctor at once; trouble with breathing is an"
                    + " emergency.";

    /** Between two waters. */
    public static final String TOOLS =
            "Nets, siphons and cups of this tank stay with it, and its water goes down the drain."
                    + " Keep it more than 3 m from other tanks and screened from splashes: spores of velvet were carried 3 m by moving"
                    + " air (Roberts-Thomson et al. 2006).";

    /** Where a medicine could be thought of. */
    public static final String MEDICINE = "No dose stands here. Whether, which and how much is for the label and a"
            + " veterinarian, and the law where you live. Never put a medicine into a display.";

    /** Where something was treated. */
    public static final String COPPER =
            "Copper in any form kills shrimps, snails, corals and most other invertebrates, and for"
                    + " fish what works is close to what harms. Rock, sand and shells soak it up and give it back: none of them in"
                    + " treated water, and nothing from it to the display. Test as often as the label says, twice a day at least.";

    /** Where ammonia is measured. */
    public static final String BINDER =
            "A product that binds ammonia makes colour tests read wrong, high or low by the kind of"
                    + " test: ask its label before you trust a reading. Some medicines stop the bacteria of a filter.";

    /** Where water is changed. */
    public static final String CHANGE =
            "New water as warm and as salty as the old, to 1 °C and 1 in salinity. Switch the heater"
                    + " off at the wall before the level falls and before hands go in.";

    private Caution() {}
}

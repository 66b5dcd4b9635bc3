package org.tidewright.husbandry.reef;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.twin.law.carbonate.Calcification;

/**
 * What corals of a form need, where nobody says which species it is: light and flow by common practice, wide enough for the
 * usual species of the form; reach that of its longest stingers, common practice; extension a year on reefs, from memory;
 * calcification over the area seen from above with the ends that two versions of the same files span (Courtney et al. 2021
 * and 2024, rates for ReefBudget).
 */
public final class FormTraits {
    private static final double MICRO = 1e-6;
    private static final double CENTIMETRE = 0.01;
    private static final double MILLIMETRE = 1e-3;

    /** mg of CaCO3 over a cm^2 in a day, as mol over a m^2 in a second. */
    private static final double RATE = 1e-6 * 1e4 / Calcification.MOLAR_MASS / 86_400;

    private static final Map<CoralForm, CoralTraits> TRAITS = new EnumMap<>(CoralForm.class);

    static {
        add(CoralForm.BRANCHING_ACROPORA, "branching acropora", 200, 450, FlowClass.HIGH, 2, 40, 100, 8.0, 3.73, 9.78);
        add(CoralForm.POCILLOPORA, "cauliflower coral", 150, 350, FlowClass.MEDIUM_HIGH, 2, 20, 50, 10.5, 3.49, 12.04);
        add(CoralForm.STYLOPHORA, "hood coral", 150, 350, FlowClass.MEDIUM_HIGH, 2, 15, 40, 7.5, 2.12, 9.18);
        add(
                CoralForm.BRANCHING_MONTIPORA,
                "finger montipora",
                120,
                300,
                FlowClass.MEDIUM_HIGH,
                1,
                20,
                60,
                9.0,
                3.15,
                11.04);
        add(
                CoralForm.PLATING_MONTIPORA,
                "plating montipora",
                100,
                250,
                FlowClass.MEDIUM_HIGH,
                1,
                30,
                80,
                2.9,
                1.88,
                3.47);
        add(CoralForm.MASSIVE_PORITES, "massive porites", 150, 350, FlowClass.MEDIUM, 2, 6, 15, 8.5, 5.81, 10.08);
        add(
                CoralForm.EUPHYLLIA,
                "torch, hammer or frogspawn coral",
                80,
                200,
                FlowClass.MEDIUM,
                20,
                10,
                25,
                5.1,
                2.83,
                6.22);
        add(CoralForm.LOBOPHYLLIA, "lobed brain coral", 60, 180, FlowClass.LOW_MEDIUM, 5, 5, 15, 6.0, 2.60, 7.32);
        add(CoralForm.FAVITES, "moon brain coral", 60, 200, FlowClass.MEDIUM, 10, 2, 8, 0.73, 0.21, 0.93);
        add(CoralForm.SOFT, "soft coral", 60, 250, FlowClass.MEDIUM, 1, 10, 50, 0, 0, 0);
    }

    private FormTraits() {}

    private static void add(
            CoralForm form,
            String words,
            double dimmest,
            double brightest,
            FlowClass flow,
            double reach,
            double slowest,
            double fastest,
            double calcification,
            double least,
            double most) {
        TRAITS.put(
                form,
                new CoralTraits(
                        words,
                        false,
                        Ranged.between(dimmest * MICRO, brightest * MICRO),
                        flow,
                        reach * CENTIMETRE,
                        Set.of(),
                        Ranged.between(slowest * MILLIMETRE, fastest * MILLIMETRE),
                        new Ranged(calcification, least, most).times(RATE),
                        // Zoanthids are written down as soft corals where the species is left out.
                        form == CoralForm.SOFT));
    }

    public static CoralTraits of(CoralForm form) {
        CoralTraits traits = TRAITS.get(form);
        if (traits == null) {
            throw new IllegalStateException("nothing is known of the form " + form);
        }
        return traits;
    }
}

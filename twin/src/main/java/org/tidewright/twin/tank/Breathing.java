package org.tidewright.twin.tank;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.gas.MolarMass;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Basis;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.law.gas.FishRespiration;
import org.tidewright.twin.law.gas.Q10;
import org.tidewright.twin.law.gas.ReefRespiration;
import org.tidewright.twin.mechanism.gas.Respiration;
import org.tidewright.twin.run.Network;

/**
 * Who breathes in the dark: animals, rock, sand and the water itself, summed from the plan; one rule of thumb for the
 * whole tank where the plan names no animals.
 */
final class Breathing {
    private final Plan plan;
    private final Water water;
    private final Network.Builder builder;
    private final Body life;

    private Breathing(Plan plan, Water water, Network.Builder builder, Body life) {
        this.plan = plan;
        this.water = water;
        this.builder = builder;
        this.life = life;
    }

    static void add(
            Plan plan,
            Water water,
            Network.Builder builder,
            Body life,
            Body display,
            @Unit("m^3") double displayVolume,
            @Nullable Body sump,
            @Unit("m^3") double sumpVolume) {
        Breathing breathing = new Breathing(plan, water, builder, life);
        if (plan.inhabitants() == null) {
            breathing.wholeTank(display, displayVolume);
        } else {
            breathing.animals(display, plan.inhabitants());
            breathing.ground(display);
            breathing.waterItself(display, displayVolume);
        }
        if (sump != null) {
            breathing.sump(sump, sumpVolume);
        }
    }

    private void wholeTank(Body display, double volume) {
        double rate = perLitreAndHour(0.5) * volume;
        Parameter factor = builder.parameter(
                "breathing of the display, factor",
                "1",
                1,
                0.4,
                2.4,
                Basis.FROM_MEMORY,
                "0.5 mg/L per hour, 0.2 lightly to 1–2 densely stocked; the plan names no animals");
        builder.add(respiration(display, rate, factor, Q10.COMMUNITY));
    }

    private void animals(Body display, Inhabitants inhabitants) {
        double fish = inhabitants.fish().stream()
                .mapToDouble(each ->
                        each.count() * FishRespiration.resting(each.mass().in("kg"), water.temperature()))
                .sum();
        if (fish > 0) {
            Parameter activity = builder.parameter(
                    "activity of the fish, factor on resting",
                    "1",
                    FishRespiration.ROUTINE,
                    1.5,
                    3,
                    Basis.PUBLISHED,
                    "resting rates: Clarke and Johnston 1999; activity from memory");
            builder.add(respiration(display, fish, activity, Q10.WITHIN_A_FISH_SPECIES));
        }
        if (inhabitants.coralTissue() != null) {
            double tissue = inhabitants.coralTissue().in("m^2");
            Parameter factor = builder.parameter(
                    "breathing of the corals, factor",
                    "1",
                    1,
                    0.5,
                    2.5,
                    Basis.FROM_MEMORY,
                    "0.6 µmol/cm²/h in the dark, 0.3–1.5");
            double rate = ReefRespiration.ofCoral(tissue, water.temperature());
            builder.add(respiration(display, rate, factor, Q10.COMMUNITY));
        }
    }

    private void ground(Body display) {
        if (plan.display().sand() != null) {
            double bed =
                    plan.display().length().in("m") * plan.display().width().in("m");
            Parameter factor = builder.parameter(
                    "breathing of the sand bed, factor",
                    "1",
                    1,
                    0.5,
                    2,
                    Basis.FROM_MEMORY,
                    "40 mmol/m² per day, 20–80");
            double rate = ReefRespiration.ofSand(bed, water.temperature());
            builder.add(respiration(display, rate, factor, Q10.COMMUNITY));
        }
        if (plan.display().rock() != null) {
            double mass = plan.display().rock().dryMass().in("kg");
            builder.add(respiration(
                    display, ReefRespiration.ofRock(mass, water.temperature()), rockFactor("display"), Q10.COMMUNITY));
        }
    }

    private void sump(Body sump, double volume) {
        waterItself(sump, volume);
        double mass = plan.sump() == null
                ? 0
                : plan.sump().sections().stream()
                        .mapToDouble(section -> section.rock() == null
                                ? 0
                                : section.rock().dryMass().in("kg"))
                        .sum();
        if (mass > 0) {
            builder.add(respiration(
                    sump, ReefRespiration.ofRock(mass, water.temperature()), rockFactor("sump"), Q10.COMMUNITY));
        }
    }

    private Parameter rockFactor(String where) {
        return builder.parameter(
                "breathing of the rock in the " + where + ", factor",
                "1",
                1,
                0.5,
                2.5,
                Basis.FROM_MEMORY,
                "0.6 mg/kg per hour for established rock, 0.3–1.5");
    }

    private void waterItself(Body body, double volume) {
        Parameter factor = builder.parameter(
                "breathing of the water in the " + body.name() + ", factor",
                "1",
                1,
                0.4,
                2.5,
                Basis.FROM_MEMORY,
                "0.03 mg/L per hour by what drifts in it");
        builder.add(respiration(body, perLitreAndHour(0.03) * volume, factor, Q10.COMMUNITY));
    }

    private Respiration respiration(Body body, double rate, Parameter factor, double q10) {
        return new Respiration(body, life, rate, factor, q10, water.temperature(), water.saturation());
    }

    /** mg/L per hour in mol/m³ per second. */
    private static double perLitreAndHour(double milligrams) {
        return milligrams * 1e-3 / MolarMass.OXYGEN / 3600;
    }
}

package org.tidewright.twin.forecast;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.AirPump;
import org.tidewright.plan.model.Chiller;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Dosing;
import org.tidewright.plan.model.Feeding;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Heater;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.Sump;
import org.tidewright.plan.model.TopOff;
import org.tidewright.plan.model.WaterChange;
import org.tidewright.plan.model.WaterKept;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;

/** A plan with something else in it, to be tried on the twin and never written down. */
public record Variant(
        Plan of,
        WaterKept water,
        Display display,
        @Nullable Sump sump,
        @Nullable Refugium refugium,
        @Nullable TopOff topOff,
        List<Gear> gear,
        List<Heater> heaters,
        List<Chiller> chillers,
        List<AirPump> airPumps,
        List<Feeding> feeding,
        List<Dosing> dosing,
        List<WaterChange> waterChanges,
        @Nullable Inhabitants inhabitants) {

    /** The plan as it stands. */
    public static Variant of(Plan plan) {
        return new Variant(
                plan,
                plan.water(),
                plan.display(),
                plan.sump(),
                plan.refugium(),
                plan.topOff(),
                plan.gear(),
                plan.heaters(),
                plan.chillers(),
                plan.airPumps(),
                plan.feeding(),
                plan.dosing(),
                plan.waterChanges(),
                plan.inhabitants());
    }

    /** As a plan. */
    public Plan plan() {
        return new Plan(
                of.tidewrightPlan(),
                of.name(),
                of.about(),
                of.units(),
                water,
                of.newWater(),
                of.room(),
                display,
                of.overflow(),
                sump,
                of.returnLine(),
                refugium,
                topOff,
                gear,
                heaters,
                chillers,
                of.fans(),
                of.lights(),
                of.circulationPumps(),
                airPumps,
                feeding,
                dosing,
                waterChanges,
                of.backup(),
                inhabitants,
                of.stand(),
                of.targets(),
                of.limits(),
                of.quarantine());
    }

    /** With other animals and their food. */
    public Variant living(@Nullable Inhabitants others, List<Feeding> meals) {
        return new Variant(
                of,
                water,
                display,
                sump,
                refugium,
                topOff,
                gear,
                heaters,
                chillers,
                airPumps,
                meals,
                dosing,
                waterChanges,
                others);
    }

    /** With other solutions dosed, and this in the reservoir. */
    public Variant dosed(List<Dosing> solutions, @Nullable TopOff reservoir) {
        return new Variant(
                of,
                water,
                display,
                sump,
                refugium,
                reservoir,
                gear,
                heaters,
                chillers,
                airPumps,
                feeding,
                solutions,
                waterChanges,
                inhabitants);
    }

    /** With other changes of water. */
    public Variant changing(List<WaterChange> changes) {
        return new Variant(
                of,
                water,
                display,
                sump,
                refugium,
                topOff,
                gear,
                heaters,
                chillers,
                airPumps,
                feeding,
                dosing,
                changes,
                inhabitants);
    }

    /** With other air pumps. */
    public Variant aired(List<AirPump> pumps) {
        return new Variant(
                of,
                water,
                display,
                sump,
                refugium,
                topOff,
                gear,
                heaters,
                chillers,
                pumps,
                feeding,
                dosing,
                waterChanges,
                inhabitants);
    }

    /** Kept at another temperature: heaters and chillers are set as far from it as they are from the plan's. */
    public Variant keptAt(@Unit("degC") double temperature) {
        double shift = temperature - water.temperature().in("degC");
        List<Heater> warmer = heaters.stream()
                .map(heater -> new Heater(
                        heater.name(),
                        heater.standsIn(),
                        heater.power(),
                        moved(heater.setpoint(), shift),
                        heater.band()))
                .toList();
        List<Chiller> cooler = chillers.stream()
                .map(chiller -> new Chiller(
                        chiller.name(),
                        chiller.standsIn(),
                        chiller.power(),
                        chiller.cooling(),
                        moved(chiller.setpoint(), shift),
                        chiller.band()))
                .toList();
        WaterKept kept = new WaterKept(
                water.salinity(),
                Amount.of(temperature, "°C"),
                water.oxygenSaturation(),
                water.alkalinity(),
                water.calcium(),
                water.magnesium(),
                water.nitrate(),
                water.nitrite(),
                water.ammonia(),
                water.phosphate());
        return new Variant(
                of,
                kept,
                display,
                sump,
                refugium,
                topOff,
                gear,
                warmer,
                cooler,
                airPumps,
                feeding,
                dosing,
                waterChanges,
                inhabitants);
    }

    private static Amount moved(Amount setpoint, double shift) {
        return Amount.of(setpoint.in("degC") + shift, "°C");
    }

    /**
     * As it is on the day it is filled: nothing lives in it, nothing is fed, dosed or changed, no skimmer, filter, reactor or
     * medium runs, no algae are grown, and its water is new.
     */
    public Variant empty() {
        List<Gear> still = gear.stream()
                .map(each -> new Gear(
                        each.name(),
                        each.standsIn(),
                        each.holdsBack(),
                        each.displaces(),
                        each.power(),
                        null,
                        null,
                        null,
                        null))
                .toList();
        WaterKept fresh = new WaterKept(
                water.salinity(),
                water.temperature(),
                water.oxygenSaturation(),
                water.alkalinity(),
                water.calcium(),
                water.magnesium(),
                Amount.of(0.2, "mg/L"),
                Amount.of(0, "mg/L"),
                Amount.of(0, "mg/L"),
                Amount.of(0.01, "mg/L"));
        return new Variant(
                of,
                fresh,
                display,
                withoutAlgae(sump),
                withoutAlgae(refugium),
                withoutLime(topOff),
                still,
                heaters,
                chillers,
                airPumps,
                List.of(),
                List.of(),
                List.of(),
                null);
    }

    private static @Nullable Sump withoutAlgae(@Nullable Sump sump) {
        if (sump == null) {
            return null;
        }
        return new Sump(
                sump.width(),
                sump.height(),
                sump.bottomHeight(),
                sump.glass(),
                sump.cover(),
                sump.baffleThickness(),
                sump.sections().stream()
                        .map(section -> new Sump.Section(
                                section.name(),
                                section.length(),
                                section.baffle(),
                                section.waterLevel(),
                                section.rock(),
                                null))
                        .toList());
    }

    private static @Nullable Refugium withoutAlgae(@Nullable Refugium refugium) {
        return refugium == null
                ? null
                : new Refugium(
                        refugium.name(),
                        refugium.length(),
                        refugium.width(),
                        refugium.height(),
                        refugium.bottomHeight(),
                        refugium.glass(),
                        refugium.cover(),
                        refugium.crest(),
                        refugium.crestLength(),
                        refugium.into(),
                        refugium.feed(),
                        refugium.outlet(),
                        refugium.rock(),
                        refugium.sand(),
                        null);
    }

    /** The reservoir filled with fresh water alone. */
    public static @Nullable TopOff withoutLime(@Nullable TopOff topOff) {
        return topOff == null ? null : new TopOff(topOff.reservoir(), topOff.pumpFlow(), null, topOff.refilledEvery());
    }
}

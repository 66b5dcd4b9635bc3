package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Between which values the water is to be held. What is left out is filled from common practice for the animals. */
public record Targets(
        @Entry(value = "least temperature", unit = "degC", least = 10, most = 35) @Nullable
        Amount temperatureFrom,

        @Entry(value = "greatest temperature", unit = "degC", least = 10, most = 35) @Nullable
        Amount temperatureTo,

        @Entry(value = "least practical salinity (PSS-78)", unit = "1", least = 5, most = 42) @Nullable
        Amount salinityFrom,

        @Entry(value = "greatest practical salinity (PSS-78)", unit = "1", least = 5, most = 42) @Nullable
        Amount salinityTo,

        @Entry(value = "least alkalinity", unit = "mol/m^3", least = 0.5, most = 10) @Nullable
        Amount alkalinityFrom,

        @Entry(value = "greatest alkalinity", unit = "mol/m^3", least = 0.5, most = 10) @Nullable
        Amount alkalinityTo,

        @Entry(value = "least calcium, as mass of Ca", unit = "kg/m^3", least = 0.1, most = 1) @Nullable
        Amount calciumFrom,

        @Entry(value = "greatest calcium, as mass of Ca", unit = "kg/m^3", least = 0.1, most = 1) @Nullable
        Amount calciumTo,

        @Entry(value = "least magnesium, as mass of Mg", unit = "kg/m^3", least = 0.3, most = 3) @Nullable
        Amount magnesiumFrom,

        @Entry(value = "greatest magnesium, as mass of Mg", unit = "kg/m^3", least = 0.3, most = 3) @Nullable
        Amount magnesiumTo,

        @Entry(value = "least nitrate, as mass of NO3", unit = "kg/m^3", least = 0, most = 0.5) @Nullable
        Amount nitrateFrom,

        @Entry(value = "greatest nitrate, as mass of NO3", unit = "kg/m^3", least = 0, most = 0.5) @Nullable
        Amount nitrateTo,

        @Entry(value = "least phosphate, as mass of PO4", unit = "kg/m^3", least = 0, most = 0.02) @Nullable
        Amount phosphateFrom,

        @Entry(value = "greatest phosphate, as mass of PO4", unit = "kg/m^3", least = 0, most = 0.02) @Nullable
        Amount phosphateTo) {}

package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

/** Seawater as it is mixed for water changes. */
public record NewWater(
        @Entry(value = "practical salinity (PSS-78)", unit = "1", least = 5, most = 42)
        Amount salinity,

        @Entry(
                value = "temperature it is poured in at; that of the system when left out",
                unit = "degC",
                least = 5,
                most = 35)
        @Nullable
        Amount temperature,

        @Entry(value = "total alkalinity", unit = "mol/m^3", least = 0.5, most = 10) @Nullable
        Amount alkalinity,

        @Entry(value = "calcium, as mass of Ca", unit = "kg/m^3", least = 0.1, most = 1) @Nullable
        Amount calcium,

        @Entry(value = "magnesium, as mass of Mg", unit = "kg/m^3", least = 0.3, most = 3) @Nullable
        Amount magnesium,

        @Entry(value = "nitrate, as mass of NO3", unit = "kg/m^3", least = 0, most = 0.5) @Nullable
        Amount nitrate,

        @Entry(value = "phosphate, as mass of PO4", unit = "kg/m^3", least = 0, most = 0.02) @Nullable
        Amount phosphate) {}

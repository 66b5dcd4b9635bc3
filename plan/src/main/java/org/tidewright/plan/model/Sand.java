package org.tidewright.plan.model;

import org.tidewright.plan.quantity.Amount;

/** A sand bed. */
public record Sand(
        @Entry(value = "mass when dry", unit = "kg", least = 0, most = 5000)
        Amount dryMass) {}

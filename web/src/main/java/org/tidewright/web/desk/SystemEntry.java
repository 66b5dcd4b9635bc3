package org.tidewright.web.desk;

import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.unit.Unit;

/**
 * A system in a list.
 *
 * @param id lower-case letters, digits and hyphens, as it stands in addresses
 * @param water all its water while running
 * @param units the plan's own
 */
public record SystemEntry(
        String id, String name, @Unit("m^3") double water, int revision, UnitSystem units) {}

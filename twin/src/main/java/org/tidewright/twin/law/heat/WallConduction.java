package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/** Heat through a pane: the film of water, the pane, what stands behind it and the film of air, one after the other. */
public final class WallConduction {
    /** Bottom pane on foam and wood, 1.0 to 2.5; common practice. */
    @Unit("W/(m^2*K)")
    public static final double BOTTOM_ON_FOAM_AND_WOOD = 1.5;

    /** Settles within a handful of rounds: the film depends but weakly on the temperature of its surface. */
    private static final int MOST_ROUNDS = 100;

    private WallConduction() {}

    /**
     * How well a wall conducts, and the state of its outer face that belongs to it.
     *
     * @param transmittance U, heat flow per area and kelvin between water and room
     * @param outsideFilm convection and radiation together
     * @param outsideTemperature of the outer face
     */
    public record Conduction(
            @Unit("W/(m^2*K)") double transmittance,
            @Unit("W/(m^2*K)") double outsideFilm,
            @Unit("degC") double outsideTemperature) {}

    /**
     * Conduction through a vertical wall, the temperature of the outer face found by iteration.
     *
     * <pre>
     * 1/U = 1/h_in + d/k + R_extra + 1/h_out,  h_out = h_convection(Ts) + h_radiation(Ts)
     * Ts = T_room + U (T_water - T_room) / h_out
     * </pre>
     *
     * @param wall the pane and its films
     * @param water temperature inside, ITS-90
     * @param room temperature of the air and of the walls of the room, ITS-90
     * @return U with the outer face's state
     * @source series of resistances; outside film by {@link NaturalConvection#verticalWall} and {@link Radiation#film}
     * @validity steady; room walls at the temperature of the air
     */
    public static Conduction through(Wall wall, @Unit("degC") double water, @Unit("degC") double room) {
        Bounds.waterTemperature(water);
        Bounds.within(room, "degC", -40, 60, "room temperature");
        double inner = 1 / wall.insideFilm() + wall.thickness() / wall.conductivity() + wall.extraResistance();
        double face = (water + room) / 2;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double outside = NaturalConvection.verticalWall(face, room, wall.height())
                    + Radiation.film(wall.emissivity(), face, room);
            double transmittance = 1 / (inner + 1 / outside);
            double next = room + transmittance * (water - room) / outside;
            if (Math.abs(next - face) < 1e-9) {
                return new Conduction(transmittance, outside, next);
            }
            face = next;
        }
        throw new IllegalStateException("outer face of " + wall + " does not settle between water at " + water
                + " degC and a room at " + room + " degC");
    }

    /**
     * Transmittance after a layer of insulation is added to a wall or bottom whose transmittance is known as a whole.
     *
     * <pre>1/U' = 1/U + d/k</pre>
     *
     * @param transmittance before
     * @param thickness of the layer
     * @param conductivity of the layer
     * @return transmittance after
     * @source series of resistances
     * @validity films taken as unchanged
     */
    @Unit("W/(m^2*K)")
    public static double insulated(
            @Unit("W/(m^2*K)") double transmittance,
            @Unit("m") double thickness,
            @Unit("W/(m*K)") double conductivity) {
        Bounds.within(transmittance, "W/(m^2*K)", 1e-6, 1e5, "transmittance");
        Bounds.within(thickness, "m", 0, 10, "thickness of the insulation");
        Bounds.within(conductivity, "W/(m*K)", 1e-3, 500, "conductivity of the insulation");
        return 1 / (1 / transmittance + thickness / conductivity);
    }
}

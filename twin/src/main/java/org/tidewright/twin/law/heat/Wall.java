package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A vertical pane between water and room.
 *
 * @param height of the wetted pane; sets the film of air outside
 * @param thickness of the pane
 * @param conductivity of the pane
 * @param extraResistance of insulation or of a wall close behind: its thickness over its conductivity, 0 for none
 * @param insideFilm film coefficient of the water
 * @param emissivity of the outer face
 */
public record Wall(
        @Unit("m") double height,
        @Unit("m") double thickness,
        @Unit("W/(m*K)") double conductivity,
        @Unit("m^2*K/W") double extraResistance,
        @Unit("W/(m^2*K)") double insideFilm,
        @Unit("1") double emissivity) {

    /** Float glass; EN 572, from memory. */
    @Unit("W/(m*K)")
    public static final double GLASS = 1.0;

    /** Cast acrylic; from memory. */
    @Unit("W/(m*K)")
    public static final double ACRYLIC = 0.19;

    /** Foam board; from memory. */
    @Unit("W/(m*K)")
    public static final double FOAM = 0.035;

    /** Film inside while the water is circulated, 300 to 500; from memory. It rarely matters. */
    @Unit("W/(m^2*K)")
    public static final double CIRCULATED = 300;

    /** Film inside in still water, 100 to 200; from memory. */
    @Unit("W/(m^2*K)")
    public static final double STILL = 150;

    public Wall {
        Bounds.within(height, "m", 0.01, 20, "wall height");
        Bounds.within(thickness, "m", 0, 1, "wall thickness");
        Bounds.within(conductivity, "W/(m*K)", 1e-3, 500, "wall conductivity");
        Bounds.within(extraResistance, "m^2*K/W", 0, 100, "extra thermal resistance");
        Bounds.within(insideFilm, "W/(m^2*K)", 1, 1e5, "film coefficient inside");
        Bounds.within(emissivity, "1", 0, 1, "emissivity");
    }

    /**
     * A bare glass pane.
     *
     * @param height of the wetted pane
     * @param thickness of the glass
     * @param insideFilm {@link #CIRCULATED} or {@link #STILL}
     * @return the wall
     */
    public static Wall ofGlass(
            @Unit("m") double height, @Unit("m") double thickness, @Unit("W/(m^2*K)") double insideFilm) {
        return new Wall(height, thickness, GLASS, 0, insideFilm, Radiation.EMISSIVITY_OF_PANES);
    }

    /**
     * The same wall behind a layer of insulation; its outer face keeps the emissivity.
     *
     * @param insulation thickness of the layer
     * @param insulationConductivity for example {@link #FOAM}
     * @return the insulated wall
     */
    public Wall behind(@Unit("m") double insulation, @Unit("W/(m*K)") double insulationConductivity) {
        double more = extraResistance + insulation / insulationConductivity;
        return new Wall(height, thickness, conductivity, more, insideFilm, emissivity);
    }
}

package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/** How a body's volume and the height of its surface belong together. */
public interface Shape {
    /** Height of the surface above the inside bottom. */
    @Unit("m")
    double level(@Unit("m^3") double volume);

    /** Water below a height. */
    @Unit("m^3")
    double volume(@Unit("m") double level);

    /** Area of the free surface at a height. */
    @Unit("m^2")
    double surface(@Unit("m") double level);

    /** A body whose level means nothing: a pipe, a device, the floor, the air. */
    static Shape none() {
        return NoSurface.INSTANCE;
    }

    /** Straight walls, with solids that displace water evenly up to a height; negative where the vessel is wider there. */
    static Shape upright(@Unit("m^2") double area, @Unit("m^3") double solids, @Unit("m") double solidsTop) {
        return new Upright(area, solids, solidsTop);
    }

    /** Straight walls that part at a height: a wider vessel below, a narrower one above. */
    static Shape stepped(@Unit("m^2") double lowerArea, @Unit("m") double stepLevel, @Unit("m^2") double upperArea) {
        return new Stepped(lowerArea, stepLevel, upperArea);
    }

    /** The shape of a body without a surface. */
    enum NoSurface implements Shape {
        INSTANCE;

        @Override
        public double level(double volume) {
            return Double.NaN;
        }

        @Override
        public double volume(double level) {
            return Double.NaN;
        }

        @Override
        public double surface(double level) {
            return 0;
        }
    }

    /**
     * Upright walls around {@code area}; {@code solids} are spread evenly from the bottom to {@code solidsTop}. Under a box
     * that hangs in the vessel there is water beside the walls of {@code area}: negative solids.
     */
    record Upright(
            @Unit("m^2") double area,
            @Unit("m^3") double solids,
            @Unit("m") double solidsTop) implements Shape {
        public Upright {
            if (!(area > 0) || !(solids == 0 || (solidsTop > 0 && solids < area * solidsTop))) {
                throw new IllegalArgumentException("a vessel of " + area + " m² cannot hold " + solids
                        + " m³ of solids up to " + solidsTop + " m and water too");
            }
        }

        private double areaAmongSolids() {
            return solids == 0 ? area : area - solids / solidsTop;
        }

        @Override
        public double level(double volume) {
            if (solids == 0) {
                return volume / area;
            }
            double amongSolids = areaAmongSolids() * solidsTop;
            return volume <= amongSolids ? volume / areaAmongSolids() : (volume + solids) / area;
        }

        @Override
        public double volume(double level) {
            return solids == 0 || level >= solidsTop ? area * level - solids : areaAmongSolids() * level;
        }

        @Override
        public double surface(double level) {
            return level >= solidsTop ? area : areaAmongSolids();
        }
    }

    /** Two upright parts, one on the other. */
    record Stepped(
            @Unit("m^2") double lowerArea,
            @Unit("m") double stepLevel,
            @Unit("m^2") double upperArea) implements Shape {
        public Stepped {
            if (!(lowerArea > 0) || !(stepLevel > 0) || !(upperArea > 0)) {
                throw new IllegalArgumentException("areas and step of a vessel must be positive, not " + lowerArea
                        + " m², " + stepLevel + " m, " + upperArea + " m²");
            }
        }

        @Override
        public double level(double volume) {
            double below = lowerArea * stepLevel;
            return volume <= below ? volume / lowerArea : stepLevel + (volume - below) / upperArea;
        }

        @Override
        public double volume(double level) {
            return lowerArea * Math.min(level, stepLevel) + upperArea * Math.max(0, level - stepLevel);
        }

        @Override
        public double surface(double level) {
            return level < stepLevel ? lowerArea : upperArea;
        }
    }
}

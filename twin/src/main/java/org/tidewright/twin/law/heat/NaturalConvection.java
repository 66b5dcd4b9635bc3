package org.tidewright.twin.law.heat;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/** Films of air that move only because a surface warms or cools them. */
public final class NaturalConvection {
    private NaturalConvection() {}

    /**
     * Film coefficient on a vertical wall.
     *
     * @param surface temperature of the wall's outer face, ITS-90
     * @param air temperature of the room, ITS-90
     * @param height of the wall
     * @return heat flow per area and kelvin between wall and air
     * @source {@link #nusseltOfVerticalWall} with air at the mean of both temperatures
     * @validity as that law, in air at one atmosphere
     */
    @Unit("W/(m^2*K)")
    public static double verticalWall(
            @Unit("degC") double surface, @Unit("degC") double air, @Unit("m") double height) {
        double film = (surface + air) / 2;
        double nusselt = nusseltOfVerticalWall(rayleigh(surface - air, film, height), RoomAir.PRANDTL);
        return nusselt * RoomAir.conductivity(film) / height;
    }

    /**
     * Film coefficient on a level plate from which heat drives the air away: warm and facing up, or cold and facing
     * down.
     *
     * @param surface temperature of the plate, ITS-90
     * @param air temperature of the air, ITS-90
     * @param length area of the plate over its perimeter
     * @return heat flow per area and kelvin between plate and air
     * @source {@link #nusseltOfStirringPlate} with air at the mean of both temperatures
     * @validity as that law, in air at one atmosphere
     */
    @Unit("W/(m^2*K)")
    public static double stirringPlate(
            @Unit("degC") double surface, @Unit("degC") double air, @Unit("m") double length) {
        double film = (surface + air) / 2;
        return nusseltOfStirringPlate(rayleigh(surface - air, film, length)) * RoomAir.conductivity(film) / length;
    }

    /**
     * Film coefficient on a level plate under which or on which the air comes to rest in layers: cold and facing up, or
     * warm and facing down.
     *
     * <pre>Nu = 0.27 Ra^(1/4)</pre>
     *
     * @param surface temperature of the plate, ITS-90
     * @param air temperature of the air, ITS-90
     * @param length area of the plate over its perimeter
     * @return heat flow per area and kelvin between plate and air
     * @source McAdams 1954, Heat Transmission, as in Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, eq.
     *     9.32
     * @validity Ra 1e5 to 1e10
     */
    @Unit("W/(m^2*K)")
    public static double layeringPlate(
            @Unit("degC") double surface, @Unit("degC") double air, @Unit("m") double length) {
        double film = (surface + air) / 2;
        double nusselt = 0.27 * Math.pow(rayleigh(surface - air, film, length), 0.25);
        return nusselt * RoomAir.conductivity(film) / length;
    }

    /**
     * Nusselt number of a vertical wall, laminar and turbulent.
     *
     * <pre>Nu = (0.825 + 0.387 Ra^(1/6) / (1 + (0.492/Pr)^(9/16))^(8/27))^2</pre>
     *
     * @param rayleigh built with the wall's height
     * @param prandtl of the fluid
     * @return Nusselt number
     * @source Churchill and Chu 1975, Int. J. Heat Mass Transfer 18, 1323-1329
     * @validity Ra up to 1e12
     */
    @Unit("1")
    public static double nusseltOfVerticalWall(@Unit("1") double rayleigh, @Unit("1") double prandtl) {
        Bounds.within(rayleigh, "1", 0, 1e13, "Rayleigh number");
        double root = 0.825
                + 0.387 * Math.pow(rayleigh, 1.0 / 6) / Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
        return root * root;
    }

    /**
     * Nusselt (or, with the Schmidt number in Ra, Sherwood) number of a level plate that drives the fluid away.
     *
     * <pre>Nu = 0.54 Ra^(1/4) laminar, 0.14 Ra^(1/3) turbulent</pre>
     *
     * The two meet at Ra = 1.1e7; below it the first is the larger, above it the second.
     *
     * @param rayleigh built with area over perimeter
     * @return Nusselt number
     * @source McAdams 1954, Heat Transmission; coefficients from memory
     * @validity Ra 1e4 to 1e11
     */
    @Unit("1")
    public static double nusseltOfStirringPlate(@Unit("1") double rayleigh) {
        Bounds.within(rayleigh, "1", 0, 1e13, "Rayleigh number");
        return Math.max(0.54 * Math.pow(rayleigh, 0.25), 0.14 * Math.cbrt(rayleigh));
    }

    private static double rayleigh(double difference, double film, double length) {
        Bounds.within(length, "m", 0.001, 100, "length of the surface");
        double viscosity = RoomAir.kinematicViscosity(film);
        double expansion = 1 / TemperatureScale.kelvin(film);
        return Gravity.STANDARD
                * expansion
                * Math.abs(difference)
                * length
                * length
                * length
                * RoomAir.PRANDTL
                / (viscosity * viscosity);
    }
}

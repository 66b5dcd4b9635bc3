package org.tidewright.twin.law.heat;

import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Heat through a closed lid of one pane. No water is lost, but while the water is the warmer it evaporates to the pane
 * and condenses there, which carries more heat than the air does.
 */
public final class LidFilm {
    /** Bowen's constant, as in {@link SurfaceConvection}. */
    private static final double BOWEN = 65; // Pa/K

    private LidFilm() {}

    /**
     * Film coefficient of the whole lid, water to room, for use in balances.
     *
     * <pre>5 W/(m^2 K) where the water is warmer than the room, 3 where it is colder</pre>
     *
     * @param water temperature, ITS-90
     * @param room temperature, ITS-90
     * @return heat flow per area and kelvin; a twin-wall lid about half
     * @source {@link #overWarmWater} and {@link #overColdWater}, rounded; common practice
     * @validity one pane of 3 to 6 mm, closed
     */
    @Unit("W/(m^2*K)")
    public static double coefficient(@Unit("degC") double water, @Unit("degC") double room) {
        Bounds.waterTemperature(water);
        Bounds.within(room, "degC", -40, 60, "room temperature");
        return water >= room ? 5 : 3;
    }

    /**
     * Two-film estimate for water warmer than the room: below the pane radiation, stirring air and the vapour it
     * carries, above it radiation and stirring air.
     *
     * <pre>
     * q = [h_r + h_c] (T - Tp) + h_c (p_w(T) - p_sat(Tp)) / (65 Pa/K)   from the water to the pane at Tp
     * q = [h_r + h_c] (Tt - T_room),  Tt = Tp - q d/k                  from the top of the pane to the room
     * </pre>
     *
     * @param water temperature, ITS-90
     * @param practicalSalinity PSS-78
     * @param room temperature, ITS-90, below that of the water
     * @param length area of the lid over its perimeter
     * @param resistance of the pane, its thickness over its conductivity
     * @return heat flow per area and kelvin between water and room
     * @source plate films of {@link NaturalConvection}, {@link Radiation} between plates, Bowen 1926 for the vapour
     * @validity an estimate, within about 10 %: the films under a lid are not those of open plates
     */
    @Unit("W/(m^2*K)")
    public static double overWarmWater(
            @Unit("degC") double water,
            @Unit("1") double practicalSalinity,
            @Unit("degC") double room,
            @Unit("m") double length,
            @Unit("m^2*K/W") double resistance) {
        double waterPressure = VapourPressure.ofSeawater(water, practicalSalinity);
        return betweenWaterAndRoom(water, room, resistance, new Films() {
            @Override
            public double below(double pane) {
                double air = NaturalConvection.stirringPlate(water, pane, length);
                double vapour = air * (waterPressure - VapourPressure.ofPureWater(pane)) / BOWEN;
                return (facing(water, pane) + air) * (water - pane) + vapour;
            }

            @Override
            public double above(double top) {
                return NaturalConvection.stirringPlate(top, room, length);
            }
        });
    }

    /**
     * Two-film estimate for water colder than the room: below the pane radiation across resting air, above it radiation
     * and air that lies in layers.
     *
     * @param water temperature, ITS-90
     * @param room temperature, ITS-90, above that of the water
     * @param gap height of the resting air between water and pane
     * @param length area of the lid over its perimeter
     * @param resistance of the pane, its thickness over its conductivity
     * @return heat flow per area and kelvin between water and room
     * @source conduction through resting air, {@link NaturalConvection#layeringPlate}, {@link Radiation}
     * @validity an estimate, within about 10 %
     */
    @Unit("W/(m^2*K)")
    public static double overColdWater(
            @Unit("degC") double water,
            @Unit("degC") double room,
            @Unit("m") double gap,
            @Unit("m") double length,
            @Unit("m^2*K/W") double resistance) {
        Bounds.within(gap, "m", 0.001, 1, "gap under the lid");
        return betweenWaterAndRoom(water, room, resistance, new Films() {
            @Override
            public double below(double pane) {
                double air = RoomAir.conductivity((water + pane) / 2) / gap;
                return (facing(water, pane) + air) * (water - pane);
            }

            @Override
            public double above(double top) {
                return NaturalConvection.layeringPlate(top, room, length);
            }
        });
    }

    /** The two sides of the pane. */
    private interface Films {
        /** Heat flow per area from the water to the underside of the pane. */
        double below(double pane);

        /** Convective film between the top of the pane and the room. */
        double above(double top);
    }

    private static double facing(double water, double pane) {
        double pair = Radiation.betweenPlates(Radiation.EMISSIVITY_OF_WATER, Radiation.EMISSIVITY_OF_PANES);
        return Radiation.film(pair, water, pane);
    }

    private static double betweenWaterAndRoom(double water, double room, double resistance, Films films) {
        Bounds.waterTemperature(water);
        Bounds.within(room, "degC", -40, 60, "room temperature");
        Bounds.within(resistance, "m^2*K/W", 0, 10, "thermal resistance of the lid");
        double warm = Math.max(water, room);
        double cold = Math.min(water, room);
        if (warm == cold) {
            throw new IllegalArgumentException("water and room are both at " + water + " degC: no heat flows");
        }
        // What reaches the pane from below less what leaves it above falls as the pane warms: halve the interval.
        for (int halving = 0; halving < 60; halving++) {
            double pane = (warm + cold) / 2;
            double flux = films.below(pane);
            double top = pane - flux * resistance;
            double leaving =
                    (films.above(top) + Radiation.film(Radiation.EMISSIVITY_OF_PANES, top, room)) * (top - room);
            if (flux > leaving) {
                cold = pane;
            } else {
                warm = pane;
            }
        }
        return films.below((warm + cold) / 2) / (water - room);
    }
}

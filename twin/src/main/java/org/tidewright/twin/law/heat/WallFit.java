package org.tidewright.twin.law.heat;

import org.tidewright.seawater.unit.Unit;

/**
 * The transmittance of one wall as a short formula through exact values, for runs that ask for it many times. Films grow
 * stronger with the difference, and radiation with the temperature:
 *
 * <pre>U = U1 |Tw - Tr|^n (1 + b ((Tw + Tr)/2 - 22.5))</pre>
 *
 * @param atOneKelvin U1, at a difference of 1 K around 22.5 °C
 * @param exponent n
 * @param perKelvin b
 */
public record WallFit(
        @Unit("W/(m^2*K)") double atOneKelvin,
        @Unit("1") double exponent,
        @Unit("1/K") double perKelvin) {
    private static final double MEAN = 22.5;

    /** Below this difference the heat is nothing to speak of, and a power of zero would be none at all. */
    private static final double LEAST_DIFFERENCE = 0.5;

    /**
     * The fit of a wall.
     *
     * @param wall the pane and its films
     * @return its fit, within 4 % of the exact value for water of 15 to 35 °C and differences of 1 to 20 K
     * @source {@link WallConduction#through}, evaluated at four points
     * @validity as there
     */
    public static WallFit of(Wall wall) {
        double one = at(wall, MEAN, 1);
        double exponent = Math.log(at(wall, MEAN, 16) / one) / Math.log(16);
        double perKelvin = (at(wall, MEAN + 7.5, 6) / at(wall, MEAN - 7.5, 6) - 1) / 15;
        return new WallFit(one, exponent, perKelvin);
    }

    private static double at(Wall wall, double mean, double difference) {
        return WallConduction.through(wall, mean + difference / 2, mean - difference / 2)
                .transmittance();
    }

    /**
     * Transmittance between water and room.
     *
     * @param water temperature inside, ITS-90
     * @param room temperature of the air and of the walls of the room, ITS-90
     * @return U, heat flow per area and kelvin between water and room
     * @source this record's formula, fitted to {@link WallConduction#through}
     * @validity water of 15 to 35 °C and differences of 1 to 20 K, within 4 %
     */
    @Unit("W/(m^2*K)")
    public double transmittance(@Unit("degC") double water, @Unit("degC") double room) {
        double difference = Math.max(LEAST_DIFFERENCE, Math.abs(water - room));
        return atOneKelvin * Math.pow(difference, exponent) * (1 + perKelvin * ((water + room) / 2 - MEAN));
    }
}

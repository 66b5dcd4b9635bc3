package org.tidewright.twin.run;

/** Practical salinity and dissolved salt per volume, in the network's units. */
final class Salt {
    /** Reference salinity in kg/kg per unit of practical salinity: Millero et al. 2008, Deep-Sea Res. I 55, eq. 6.5. */
    private static final double KG_PER_KG = 35.16504e-3 / 35;

    private Salt() {}

    static double perVolume(double practicalSalinity, double density) {
        return practicalSalinity * KG_PER_KG * density;
    }

    static double practicalSalinity(double perVolume, double density) {
        return perVolume / density / KG_PER_KG;
    }
}

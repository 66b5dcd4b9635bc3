package org.tidewright.plan.model;

/**
 * Pieces a keeper's pipe runs are made of, with their losses. Published methods differ by tens of per cent for the same
 * piece, so every K is a usual value in a range.
 *
 * <p>To add one, give it a range that holds every published value for it, and a test that says so.
 *
 * @source usual values from memory of handbook ranges; the ranges widened, where need be, to hold what the two-K method
 *     of Hooper 1981, the three-K method of Darby 1999, Technical Paper 410 (2009), Rennels and Hudson 2012, Miller 1990
 *     and Idel'chik 1966 give for bores of 20-50 mm
 */
public enum Fitting {
    /** Right-angle elbow, short, with a sharp or barely rounded inside. */
    ELBOW_90(0.9, 0.6, 1.5),
    /** Right-angle bend, swept, radius of the axis one bore or more. */
    BEND_90(0.4, 0.2, 0.6),
    /** Half-right-angle elbow. */
    ELBOW_45(0.35, 0.15, 0.45),
    /** Right-angle turn cut from straight pipe. */
    MITRE_90(1.3, 1.1, 2.3),
    /** Tee passed straight on. */
    TEE_THROUGH(0.4, 0.1, 0.6),
    /** Tee entered or left by its branch. */
    TEE_BRANCH(1.3, 1.0, 1.8),
    /** Union or coupling that can be undone. */
    UNION(0.1, 0.02, 0.15),
    /** Ball valve, full bore, open. */
    BALL_VALVE(0.08, 0.05, 0.1),
    /** Gate valve, open. */
    GATE_VALVE(0.2, 0.1, 0.25),
    /** Entry from a vessel, pipe flush with the wall, edge sharp. */
    SHARP_ENTRY(0.5, 0.5, 0.57),
    /** Entry from a vessel, edge well rounded (radius a tenth of the bore or more). */
    ROUNDED_ENTRY(0.1, 0.05, 0.25),
    /** Entry from a vessel, pipe standing out into the water. */
    PROJECTING_ENTRY(0.8, 0.65, 1.0),
    /** Barbed tail of a hose: a bore of about 0.8 and its way back. */
    HOSE_TAIL(1.0, 0.3, 2.0);

    private final LossCoefficient loss;

    Fitting(double usual, double least, double most) {
        this.loss = new LossCoefficient(usual, least, most);
    }

    /** What it costs the flow. */
    public LossCoefficient loss() {
        return loss;
    }
}

package org.tidewright.seawater.ions;

import java.util.List;
import org.tidewright.seawater.unit.Unit;

/**
 * The parts of sea salt that a keeper's kit or a laboratory reports, each as it is reported: boron is weighed as B
 * whether it is borate or boric acid, sulfate by a kit as SO4 and by a plasma spectrometer as S.
 *
 * <p>Phosphate, nitrate, iodine and metals are no part of the Reference Composition: they do not go with the salt.
 *
 * @source {@link MajorIon}; what is reported as what: common practice
 */
public enum TestedElement implements SeaSaltPart {
    /** As Ca. */
    CALCIUM(AtomicWeight.CALCIUM, MajorIon.CALCIUM),
    /** As Mg. */
    MAGNESIUM(AtomicWeight.MAGNESIUM, MajorIon.MAGNESIUM),
    /** As K. */
    POTASSIUM(AtomicWeight.POTASSIUM, MajorIon.POTASSIUM),
    /** As Sr. */
    STRONTIUM(AtomicWeight.STRONTIUM, MajorIon.STRONTIUM),
    /** As B, borate and boric acid together. */
    BORON(AtomicWeight.BORON, MajorIon.BORATE, MajorIon.BORIC_ACID),
    /** As SO4. */
    SULFATE(AtomicWeight.SULFUR + 4 * AtomicWeight.OXYGEN, MajorIon.SULFATE),
    /** The sulfate as S. */
    SULFUR(AtomicWeight.SULFUR, MajorIon.SULFATE),
    /** As Na. */
    SODIUM(AtomicWeight.SODIUM, MajorIon.SODIUM),
    /** As Cl. */
    CHLORIDE(AtomicWeight.CHLORINE, MajorIon.CHLORIDE),
    /** As Br. */
    BROMIDE(AtomicWeight.BROMINE, MajorIon.BROMIDE),
    /** As F. */
    FLUORIDE(AtomicWeight.FLUORINE, MajorIon.FLUORIDE);

    private final double gramsPerMole;
    private final List<MajorIon> ions;

    TestedElement(double gramsPerMole, MajorIon... ions) {
        this.gramsPerMole = gramsPerMole;
        this.ions = List.of(ions);
    }

    /** Which constituents it is the sum of. */
    public List<MajorIon> ions() {
        return ions;
    }

    @Override
    public @Unit("1") double moleFraction() {
        return ions.stream().mapToDouble(MajorIon::moleFraction).sum();
    }

    /** What a mole of it weighs as reported, by the atomic weights of IUPAC 2005. */
    @Override
    public @Unit("kg/mol") double molarMass() {
        return gramsPerMole / 1000;
    }
}

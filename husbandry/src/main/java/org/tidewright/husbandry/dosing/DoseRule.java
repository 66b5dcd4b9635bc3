package org.tidewright.husbandry.dosing;

import org.tidewright.husbandry.estimate.Known;
import org.tidewright.seawater.unit.Unit;

/**
 * Decides what to do about a dose.
 *
 * <p>It leaves the dose alone while the level will likely be in its range when it is next tested: a reading that stands beside
 * the aim is no reason to act, and every move costs a wait. A move meets the use and brings the level back to its aim over a
 * week, no faster than is safe.
 */
public final class DoseRule {
    /** A chance of being outside at the next test that calls for a move. Ours: a keeper may live with one in ten. */
    @Unit("1")
    public static final double TOO_LIKELY = 0.10;

    /** A chance of being outside now that calls for a correction: more likely than not. */
    private static final double OUTSIDE = 0.5;

    /** Days; long enough that an error of the level does not make the dose jump. Common practice is one to four weeks. */
    private static final double RETURN = 7;

    /** A chance of being outside for which a move that no test will tell is not waited out. */
    private static final double URGENT = 0.3;

    /** Share of the doubt of the dose to set below which a move is noise; by trials on the twin, see the science of dosing. */
    private static final double TOLD = 0.5;

    /** Days in which a level that is outside its range comes back, where the safe rate allows. */
    private static final double SOONER = 5;

    private DoseRule() {}

    /** The advice. */
    public static DoseAdvice advise(DoseCase now, Aim aim) {
        double outside = chanceOutside(now.now(), aim);
        double chance = chanceOutside(now.next(), aim);
        if (now.now().standardError() > (aim.most() - aim.least()) / 2) {
            // A level that nobody looked at for long may lie anywhere; that asks for a test and not for a dose.
            return now.settling() != null
                    ? new DoseAdvice.Settle(now.settling(), chance)
                    : new DoseAdvice.Leave(chance);
        }
        // What comes back by itself before the next test is left to do so.
        boolean beyond = now.now().value() < aim.least() || now.now().value() > aim.most();
        if (beyond && outside > OUTSIDE && chance > OUTSIDE) {
            return outside(now, aim, outside);
        }
        if (now.settling() != null && (now.settling().told() || chance <= URGENT)) {
            return new DoseAdvice.Settle(now.settling(), chance);
        }
        double better = movable(now, comingBack(now, aim, RETURN));
        if (chance > TOO_LIKELY && !isNear(now, better)) {
            return new DoseAdvice.Move(better, chance);
        }
        return now.settling() != null ? new DoseAdvice.Settle(now.settling(), chance) : new DoseAdvice.Leave(chance);
    }

    /** Below its range it is lifted by hand; above, less is dosed and the system brings it down. */
    private static DoseAdvice outside(DoseCase now, Aim aim, double outside) {
        double lift = aim.value() - now.now().value();
        int days = (int) Math.max(1, Math.ceil(Math.abs(lift) / aim.safeRate() - 1e-9));
        double better = movable(now, lift > 0 ? 0 : comingBack(now, aim, SOONER));
        if (lift > 0) {
            return new DoseAdvice.Correct(lift, days, isNear(now, better) ? now.movable() : better, outside);
        }
        if (!isNear(now, better)) {
            return new DoseAdvice.Correct(lift, days, better, outside);
        }
        return now.settling() != null ? new DoseAdvice.Settle(now.settling(), outside) : new DoseAdvice.Leave(outside);
    }

    /** What brings the level back to its aim in so many days, a day, no faster than is safe. */
    private static double comingBack(DoseCase now, Aim aim, double days) {
        double back = (aim.value() - now.now().value()) / days;
        return Math.max(-aim.safeRate(), Math.min(aim.safeRate(), back));
    }

    /** A dose beside the present one by less than is known of the one to set: moving it would be moving on noise. */
    private static boolean isNear(DoseCase now, double better) {
        double doubt = Math.hypot(now.missing().standardError(), now.now().standardError() / RETURN);
        return Math.abs(better - now.movable()) < Math.max(now.step() / 2, TOLD * doubt);
    }

    /** What the movable dose has to bring so that the level moves by so much a day. */
    private static double movable(DoseCase now, double back) {
        double wanted = Math.max(0, now.movable() + back + now.missing().value());
        return wanted < now.most()
                ? Math.rint(wanted / now.step()) * now.step()
                : Math.floor(now.most() / now.step()) * now.step();
    }

    /** The chance that a level lies outside the range. */
    public static @Unit("1") double chanceOutside(Known level, Aim aim) {
        return level.chanceBelow(aim.least()) + 1 - level.chanceBelow(aim.most());
    }
}

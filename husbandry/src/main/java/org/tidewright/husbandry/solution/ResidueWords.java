package org.tidewright.husbandry.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.solution.SolutionReport.Told;
import org.tidewright.plan.model.Salt;
import org.tidewright.seawater.ions.MajorIon;

/** Tells what a year of doses leaves behind. */
final class ResidueWords {
    private static final double DAY = 86_400;

    /** Creep of the salinity that a conductivity meter shows, and that keepers let pass; common practice. */
    private static final double LET_PASS = 1;

    /** Share of other ions up to which a residue is called table salt. */
    private static final double TABLE_SALT = 0.02;

    /** Days of salts weighed in one go. */
    private static final double MONTH = 30;

    /** Salts that go by the day in milligrams are not worth a bottle. */
    private static final double WORTH_DOSING = 0.1e-3;

    /** Calcium drawn out of the water in a year, mol/m^3, at which keepers dose it: a tenth of the sea's; common practice. */
    private static final double DRAWN = 1;

    private static final double NOTHING = 1e-9;

    /** Larger water changes are no habit; common practice. */
    private static final double MOST_AT_ONCE = 0.5;

    private static final List<MajorIon> TOLD = List.of(
            MajorIon.SODIUM,
            MajorIon.CHLORIDE,
            MajorIon.MAGNESIUM,
            MajorIon.SULFATE,
            MajorIon.CALCIUM,
            MajorIon.POTASSIUM);

    private final ResidueCourse course;
    private final SolutionSources sources = new SolutionSources();

    private final double doubt;

    ResidueWords(ResidueCourse course, double doubt) {
        this.course = course;
        this.doubt = doubt;
    }

    private Figure told(Measure measure, double value) {
        return doubt > 0 ? Figure.about(measure, value, doubt * Math.abs(value)) : Figure.exact(measure, value);
    }

    SolutionReport report() {
        Sentence lead = lead();
        List<Sentence> remarks = new ArrayList<>();
        if (!leavesNothing()) {
            remarks.add(whatItIs());
            remarks.add(proportions());
        }
        if (creep() >= LET_PASS) {
            remarks.add(changesThatHoldIt());
        }
        if (course.residue().besidesTableSalt() < TABLE_SALT
                && sodiumPerDay() * MajorIon.SODIUM.molarMass() > WORTH_DOSING) {
            remarks.add(balanced());
        }
        List<Sentence> cautions = List.of(
                Sentence.of(
                        "Bring the salinity back by no more than one unit a day with corals in the water, and measure"
                                + " it before and after: the sum knows nothing of what skimmer and drops carry off."),
                Sentence.of(
                        "Test calcium, magnesium and potassium before you add any of them: a sum over a year gathers"
                                + " every error of a day."));
        return new SolutionReport(lead, List.of(), remarks, figures(), cautions, sources.all());
    }

    private boolean isChanged() {
        return course.changed() > 0;
    }

    private double creep() {
        return isChanged() ? course.creepPlateau() : course.creep(ResidueCourse.YEAR);
    }

    private double gathered() {
        return isChanged() ? course.saltPlateau() : course.saltGathered(ResidueCourse.YEAR);
    }

    private boolean leavesNothing() {
        return Math.abs(DAY * course.residue().mass()) < NOTHING
                && course.residue().besidesTableSalt() < NOTHING;
    }

    private Sentence lead() {
        if (leavesNothing()) {
            return Sentence.of("Dose on: these leave no salt behind, for calcification takes all that they bring.");
        } else if (course.gathered(MajorIon.CALCIUM, ResidueCourse.YEAR) < -DRAWN) {
            return calciumToo();
        }
        Object salt = Sentence.figure(told(Measure.SALT_STRENGTH, gathered()), sources.balance());
        Object rise = told(Measure.SALINITY, Math.abs(creep()));
        boolean up = creep() >= 0;
        boolean little = Math.abs(creep()) < LET_PASS;
        if (isChanged()) {
            return Sentence.of(
                    little
                            ? "Leave the water changes as they are: "
                            : "Measure the salinity before each water change, and thin the tank down then: ",
                    "before each change ",
                    salt,
                    " of salt has gathered from the doses in the end, and the salinity stands ",
                    rise,
                    up ? " higher." : " lower.");
        }
        return Sentence.of(
                little ? "Check the salinity once a month: " : "Take water out for fresh water, or change some: ",
                "without water changes ",
                salt,
                " of salt gathers from the doses in a year, and the salinity would ",
                up ? "rise" : "fall",
                " by ",
                rise,
                ".");
    }

    private Sentence calciumToo() {
        double drawn =
                -DAY * course.residue().amount(MajorIon.CALCIUM) * MajorIon.CALCIUM.molarMass() / course.volume();
        return Sentence.of(
                Sentence.alarm("Dose calcium too:"),
                " with the alkalinity of these doses skeletons take ",
                Sentence.figure(told(Measure.CONCENTRATION_A_DAY, drawn), sources.balance()),
                " more calcium than comes with them, and the water’s own runs down within the year.");
    }

    private Sentence whatItIs() {
        double other = course.residue().besidesTableSalt();
        Figure mass = told(Measure.SMALL_MASS, DAY * course.residue().mass());
        return other < TABLE_SALT
                ? Sentence.of("What stays is table salt, ", mass, " a day: calcification takes the rest.")
                : Sentence.of(
                        "What stays comes to ",
                        mass,
                        " a day, ",
                        Figure.exact(Measure.SHARE, other),
                        " of it, by what there is too much or too little of, other than sodium and chloride.");
    }

    private Sentence proportions() {
        List<Object> pieces = new ArrayList<>();
        pieces.add("Brought back to a salinity of ");
        pieces.add(Figure.exact(Measure.SALINITY, course.practicalSalinity()));
        pieces.add(" after a year, the water holds of the sea’s own amount ");
        for (int i = 0; i < TOLD.size(); i++) {
            MajorIon ion = TOLD.get(i);
            pieces.add(i == 0 ? "" : i == TOLD.size() - 1 ? " and " : ", ");
            pieces.add(Sentence.figure(Figure.exact(Measure.SHARE, share(ion)), sources.sea()));
            pieces.add(" of " + name(ion));
        }
        pieces.add(".");
        return Sentence.of(pieces.toArray());
    }

    /** The plateau is r/w, so that w is the plateau of changing all of it over what is let pass. */
    private Sentence changesThatHoldIt() {
        ResidueCourse all = new ResidueCourse(
                course.residue(),
                course.volume(),
                course.practicalSalinity(),
                course.temperature(),
                1,
                course.period());
        double share = all.creepPlateau() / LET_PASS;
        Figure within = Figure.exact(Measure.SALINITY, LET_PASS);
        return share > MOST_AT_ONCE
                ? Sentence.of(
                        "No usual water change holds it within ",
                        within,
                        " at this pace: thin the tank down, or let part of the alkalinity come from limewater, which leaves"
                                + " no salt.")
                : Sentence.of(
                        "To hold it within ",
                        within,
                        ", change ",
                        Sentence.figure(told(Measure.VOLUME, share * course.volume()), sources.balance()),
                        " every ",
                        Figure.exact(Measure.DURATION, course.period()),
                        ", or let part of the alkalinity come from limewater, which leaves no salt.");
    }

    /** After a year; what has run out does not fall further. */
    private double share(MajorIon ion) {
        return Math.max(0, course.shareOfSea(ion, ResidueCourse.YEAR));
    }

    private static String name(MajorIon ion) {
        return ion.name().toLowerCase(Locale.ROOT);
    }

    private double sodiumPerDay() {
        return DAY * course.residue().amount(MajorIon.SODIUM);
    }

    private BalancedResidue balance() {
        return BalancedResidue.of(sodiumPerDay(), course.practicalSalinity(), course.temperature());
    }

    private Sentence balanced() {
        BalancedResidue balance = balance();
        List<Object> pieces = new ArrayList<>();
        pieces.add("Or make sea salt of it: dose besides, in a month of 30 days, ");
        int left = balance.extra().size();
        for (Map.Entry<Salt, Double> part : balance.extra().entrySet()) {
            left--;
            pieces.add(Figure.exact(
                    Measure.SMALL_MASS, MONTH * part.getValue() * part.getKey().molarMass()));
            pieces.add(" of " + part.getKey().words() + (left == 0 ? "" : left == 1 ? " and " : ", "));
        }
        pieces.add(", the sulfate in a bottle of its own, and take out each day ");
        pieces.add(Sentence.figure(Figure.exact(Measure.DOSE, balance.exported()), sources.sea()));
        pieces.add(" of tank water for fresh water. Traces are not in it.");
        return Sentence.of(pieces.toArray());
    }

    private List<Told> figures() {
        List<Told> figures = new ArrayList<>();
        figures.add(new Told(
                isChanged() ? "salt before each change, in the end" : "salt after a year",
                told(Measure.SALT_STRENGTH, gathered()),
                sources.balance()));
        figures.add(new Told("salinity over it", told(Measure.SALINITY, creep()), sources.balance()));
        for (MajorIon ion : TOLD) {
            figures.add(new Told(
                    name(ion) + " over the sea’s own", Figure.exact(Measure.SHARE, share(ion)), sources.sea()));
        }
        return figures;
    }
}

package org.tidewright.husbandry.burden;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.newtank.Stocking;
import org.tidewright.twin.forecast.Outlook.Range;

/** Tells what animals that are to come would do: act first, then the reason. */
final class BurdenWords {
    private final Burden burden;
    private final Sources all;
    private final BurdenSources sources;
    private final String it;
    private final NutrientRemarks nutrients;

    BurdenWords(Burden burden) {
        this.burden = burden;
        all = new Sources();
        sources = new BurdenSources(burden, all);
        it = burden.addition().count() == 1 ? "it" : "them";
        nutrients = new NutrientRemarks(burden, sources, it);
    }

    Advice advice() {
        List<Sentence> remarks = remarks();
        sources.rest();
        return new Advice(lead(), remarks, figures(), working(), cautions(), all.all());
    }

    // ── what to do ──

    private Sentence lead() {
        if (burden.restless() > Burden.MOST_DRAWS) {
            return Sentence.of(
                    "Add nothing yet: ammonia or nitrite would stand too high in the next weeks even without ",
                    it + ", in ",
                    share(burden.restless()),
                    " of the draws. Wait until tests show neither.");
        }
        if (burden.saturation().with().middle() < Burden.SHORT_OF_AIR) {
            return Sentence.of(
                    "Move more air over the water before you add " + it + ": on a usual night oxygen would fall to ",
                    told(percent(burden.saturation().with())),
                    " of saturation, to ",
                    told(percent(burden.saturation().without())),
                    " without " + it + ".");
        }
        return byAmmonia();
    }

    private Sentence byAmmonia() {
        Range calm = burden.calm();
        int day = burden.addition().day();
        if (calm.high() <= day) {
            String early = calm.high() > 0 ? ", and not before day\u00a0" + whole(calm.high()) : "";
            String act = nutrients.first().isEmpty()
                    ? "Add " + it + " " + when(day) + early + ", as far as ammonia goes: "
                    : "Take out more " + nutrients.first() + " before you add " + it + "; ammonia is no hindrance "
                            + when(day) + early + ": ";
            return Sentence.of(act, freeAmmoniaStays());
        }
        if (Double.isFinite(calm.high())) {
            return Sentence.of(
                    "Wait with " + it + " until day\u00a0" + whole(calm.high())
                            + ": the bacteria are still catching up, and ",
                    reaches());
        }
        if (calm.middle() <= day) {
            return Sentence.of(
                    "Add " + it + " " + when(day) + " only if you will test ammonia and nitrite every other day: in ",
                    share(burden.calmToday()),
                    " of the draws the water stays calm, in the others waiting would not help; ",
                    reaches());
        }
        if (Double.isFinite(calm.middle())) {
            return Sentence.of(
                    "Wait with " + it + " until day\u00a0" + whole(calm.middle())
                            + " at least, and then for tests that show neither ammonia nor nitrite: ",
                    reaches());
        }
        return Sentence.of(
                "Do not add " + it + " as things are: ",
                reaches(),
                " Waiting alone would not help: the bacteria grow with what they are asked, and not before."
                        + " Fewer or smaller ones at a time, or more ripe rock and media first.");
    }

    private Sentence freeAmmoniaStays() {
        return Sentence.of(
                "free ammonia stays at ",
                told(trace(burden.freeAmmonia().with())),
                " in the three weeks after, where ",
                Sentence.figure(exact(Stocking.WATCH), sources.freeAmmonia()),
                " is to be watched.");
    }

    private Sentence reaches() {
        return Sentence.of(
                "with " + it + " " + when(burden.addition().day()) + " free ammonia would reach ",
                told(trace(burden.freeAmmonia().with())),
                " and nitrite ",
                told(trace(burden.nitrite().with())),
                ", where ",
                Sentence.figure(exact(Stocking.WATCH), sources.freeAmmonia()),
                " and ",
                Sentence.figure(exact(Stocking.NITRITE_WATCH), sources.nitrite()),
                " are to be watched.");
    }

    // ── what else ──

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        remarks.add(tests());
        remarks.addAll(nutrients.remarks());
        remarks.add(night());
        remarks.addAll(OutageRemarks.of(burden, sources, it));
        if (burden.restless() > 0 && burden.restless() <= Burden.MOST_DRAWS) {
            remarks.add(Sentence.of(
                    "In ",
                    share(burden.restless()),
                    " of the draws ammonia or nitrite is not calm even without " + it
                            + ": their bacteria feel low ammonia late. If your tests show none, yours are not like that, and"
                            + " ammonia, nitrite and the days above leave them out."));
        }
        if (burden.endedEarly() > 0) {
            remarks.add(Sentence.of(burden.endedEarly()
                    + " more draws came to a state no law of the twin holds for and are left out."));
        }
        return remarks;
    }

    /** What a kit would show. */
    private Sentence tests() {
        boolean shown = burden.ammonia().with().middle() >= BurdenSources.SHOWS;
        return Sentence.of(
                shown ? "A test will show ammonia: " : "A test should show no ammonia: ",
                told(trace(burden.ammonia().with())),
                " at the most in the three weeks after, ",
                told(trace(burden.ammonia().without())),
                " without " + it + ", as nitrogen; it shows from ",
                Sentence.figure(exact(BurdenSources.SHOWS), sources.kit()),
                ".");
    }

    private Sentence night() {
        double now = burden.saturation().with().middle();
        double grown = burden.grown().saturation().with().middle();
        String act = now >= Burden.EASY_BREATHING && grown >= Burden.EASY_BREATHING
                ? "The night's air is enough: "
                : grown < Burden.SHORT_OF_AIR && now >= Burden.SHORT_OF_AIR
                        ? "More air over the water will be needed as "
                                + (it.equals("it") ? "it grows: " : "they grow: ")
                        : "Watch the nights: ";
        return Sentence.of(
                act + "oxygen falls to ",
                told(milligrams(burden.oxygen().without())),
                " without " + it + ", with " + it + " by ",
                told(milligrams(burden.oxygen().less())),
                " lower and with " + it + " grown by ",
                told(milligrams(burden.grown().oxygen().less())),
                ", to ",
                Sentence.figure(percent(burden.grown().saturation().with()), sources.night()),
                " of saturation.");
    }

    private List<Sentence> working() {
        List<Sentence> working = new ArrayList<>();
        working.add(Sentence.of("Each figure is the middle of " + burden.draws()
                + " draws of what is not known exactly, with the range of nine of ten; differences are taken draw by draw, with"
                + " and without " + it + "."));
        working.add(Sentence.of(
                Joined.isFedLikeOthers(burden.plan()) && burden.addition().food() == null
                        ? "Fed like those that are there: as much for its breath, which goes with mass to the 0.8."
                        : burden.addition().food() == null
                                ? "Fed 2\u00a0% of live mass a day in dry food, since the plan feeds nobody to go by; grown, as"
                                        + " much for its breath, which goes with mass to the 0.8."
                                : "Fed as you say; grown, as much for its breath, which goes with mass to the 0.8."));
        working.add(Sentence.of(bacteria()));
        working.add(Sentence.of("Nitrate, phosphate and oxygen are told as if " + (it.equals("it") ? "it" : "they")
                + " came today, at this size or grown; ammonia and nitrite from the day of arrival."));
        return working;
    }

    private String bacteria() {
        Lately lately = burden.lately();
        String tested = lately.cleared() > 0 ? " They clear at least what your last test of the water found." : "";
        return lately.arrivals().isEmpty()
                ? "The bacteria are as many as those that live there keep in the long run." + tested
                : "The bacteria are those of the system before the arrivals of the last eight weeks, grown since."
                        + tested;
    }

    private List<Advice.Told> figures() {
        List<Advice.Told> figures = new ArrayList<>();
        figures.add(
                told("ammonia, highest in three weeks", trace(burden.ammonia().with())));
        figures.add(told(
                "free ammonia, highest in three weeks",
                trace(burden.freeAmmonia().with())));
        figures.add(
                told("nitrite, highest in three weeks", trace(burden.nitrite().with())));
        figures.add(
                told("nitrate after twelve weeks", milligrams(burden.nitrate().with())));
        figures.add(
                told("phosphate after twelve weeks", trace(burden.phosphate().with())));
        figures.add(told("oxygen, lowest of a night", milligrams(burden.oxygen().with())));
        figures.add(told(
                "nitrate after twelve weeks, grown",
                milligrams(burden.grown().nitrate().with())));
        figures.add(told(
                "phosphate after twelve weeks, grown",
                trace(burden.grown().phosphate().with())));
        figures.add(told(
                "oxygen, lowest of a night, grown",
                milligrams(burden.grown().oxygen().with())));
        return figures;
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "Test ammonia and nitrite every other day for three weeks. Where one shows, feed less, add nothing more,"
                        + " and change water; what a test shows goes before what is computed here.");
        cautions.add(
                "A fish that gasps at the surface wants air and a change of water now, not a curve; ask a veterinarian who"
                        + " knows fish.");
        return cautions;
    }

    // ── figures ──

    private Advice.Told told(String name, Figure figure) {
        return new Advice.Told(name, figure, sources.twin());
    }

    private Sentence.Part told(Figure figure) {
        return Sentence.figure(figure, sources.twin());
    }

    static Figure trace(Range range) {
        return Figure.between(Measure.TRACE, range.middle() / 1e3, range.low() / 1e3, range.high() / 1e3);
    }

    static Figure milligrams(Range range) {
        return Figure.between(Measure.CONCENTRATION, range.middle() / 1e3, range.low() / 1e3, range.high() / 1e3);
    }

    private static Figure percent(Range range) {
        return Figure.between(Measure.SHARE, range.middle() / 100, range.low() / 100, range.high() / 100);
    }

    private static Figure exact(double milligramsPerLitre) {
        return Figure.exact(Measure.TRACE, milligramsPerLitre / 1e3);
    }

    private static Figure share(double share) {
        return Figure.exact(Measure.SHARE, share);
    }

    private static String when(int day) {
        return day == 0 ? "today" : "on day\u00a0" + day;
    }

    private static String whole(double days) {
        return Long.toString(Math.round(days));
    }
}

package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.burden.BurdenSources;
import org.tidewright.husbandry.burden.Nutrient;
import org.tidewright.husbandry.burden.Sooner;
import org.tidewright.husbandry.limit.Limit;
import org.tidewright.husbandry.newtank.Stocking;
import org.tidewright.twin.forecast.Outlook.Range;

/** What the twin says it would do to the water: ammonia, nitrate and phosphate, oxygen at night and in an outage. */
final class WaterRule implements Rule {
    /** Share of the draws: all of the fewest but one. */
    private static final double NEARLY_ALL = 0.9;

    @Override
    public List<Finding> judge(Situation seen) {
        if (seen.burden() == null) {
            return List.of();
        }
        Told told = new Told(
                seen.burden(),
                new BurdenSources(seen.burden(), seen.sources()),
                seen.setting().today());
        List<Finding> findings = new ArrayList<>();
        findings.add(told.ammonia());
        findings.addAll(told.nutrients());
        findings.add(told.night());
        findings.addAll(told.outage());
        return findings;
    }

    /** A burden in findings. */
    private record Told(Burden burden, BurdenSources sources, LocalDate today) {
        Finding ammonia() {
            Range calm = burden.calm();
            if (burden.restless() > Burden.MOST_DRAWS) {
                return Finding.of(
                                "ammonia",
                                Call.NOT_YET,
                                Sentence.of("Ammonia or nitrite would stand too high even without it."),
                                Sentence.of("So the twin finds in ", share(burden.restless()), " of its draws."))
                        .becomes(Sentence.of("Wait until tests have shown neither for a week."));
            } else if (calm.high() <= 0 || (calm.middle() <= 0 && burden.calmToday() >= NEARLY_ALL)) {
                return Finding.of(
                        "ammonia",
                        Call.YES,
                        Sentence.of("Ammonia stays low while the bacteria follow."),
                        Sentence.of("Free ammonia rises to ", freeAmmonia(), watched()));
            } else if (Double.isFinite(calm.high())) {
                return later(calm.high(), "");
            } else if (calm.middle() <= 0) {
                return Finding.of(
                        "ammonia",
                        Call.MIND,
                        Sentence.of("Test ammonia and nitrite every other day for three weeks."),
                        Sentence.of(
                                "The water stays calm in ",
                                share(burden.calmToday()),
                                " of the draws; in the others waiting would not help. Free ammonia may reach ",
                                freeAmmonia(),
                                watched()));
            } else if (Double.isFinite(calm.middle())) {
                return later(calm.middle(), ", once tests show neither ammonia nor nitrite");
            }
            return Finding.of(
                            "ammonia",
                            Call.NOT_YET,
                            Sentence.of("So much at once is more than your bacteria take up."),
                            Sentence.of("Free ammonia would reach ", freeAmmonia(), watched()))
                    .becomes(
                            Sentence.of("Take fewer or smaller ones at a time, or add more ripe rock or media first."));
        }

        private Finding later(double days, String more) {
            return Finding.of(
                            "ammonia",
                            Call.NOT_YET,
                            Sentence.of("Your bacteria are still catching up with those that came last."),
                            Sentence.of("Today free ammonia would reach ", freeAmmonia(), watched()))
                    .becomes(Sentence.of(
                            "Add it after " + Facts.date(today.plusDays(Math.round(days)), today) + more + "."));
        }

        private Sentence.Part freeAmmonia() {
            Range range = burden.freeAmmonia().with();
            return Sentence.figure(
                    Figure.between(Measure.TRACE, range.middle() / 1e3, range.low() / 1e3, range.high() / 1e3),
                    sources.twin());
        }

        private Sentence watched() {
            return Sentence.of(
                    " of nitrogen; it is watched from ",
                    Sentence.figure(Figure.exact(Measure.TRACE, Stocking.WATCH / 1e3), sources.freeAmmonia()),
                    ".");
        }

        List<Finding> nutrients() {
            return Nutrient.of(burden).stream()
                    .filter(each -> each.leaves(each.young()) || each.leaves(each.grown()))
                    .map(this::nutrient)
                    .toList();
        }

        private Finding nutrient(Nutrient each) {
            boolean now = each.leaves(each.young());
            Finding finding = Finding.of(
                    "nutrients",
                    each.surelyLeaves() ? Call.NOT_YET : Call.MIND,
                    Sentence.of(
                            now
                                    ? "Its food lifts " + each.name() + " over what is held here."
                                    : "Grown, its food lifts " + each.name() + " over what is held here."),
                    Sentence.of(
                            "In twelve weeks it stands at ",
                            Sentence.figure(each.figure(each.young().without()), sources.twin()),
                            " without it, ",
                            Sentence.figure(each.figure(each.young().more()), sources.twin()),
                            " higher with it and ",
                            Sentence.figure(each.figure(each.grown().more()), sources.twin()),
                            " higher once grown; it is held under ",
                            Sentence.figure(each.most(), sources.range(each.held())),
                            "."));
            return finding.call() == Call.NOT_YET
                    ? finding.becomes(Sentence.of(
                            "Take out more " + each.name() + " first: the page Feed and export shows by what."))
                    : finding;
        }

        Finding night() {
            double now = burden.saturation().with().middle();
            double grown = burden.grown().saturation().with().middle();
            Sentence why = Sentence.of(
                    "Before dawn oxygen falls to ",
                    night(burden.saturation().without()),
                    " of saturation without it, to ",
                    night(burden.saturation().with()),
                    " with it and to ",
                    night(burden.grown().saturation().with()),
                    " with it grown.");
            if (now < Burden.SHORT_OF_AIR) {
                return Finding.of("oxygen", Call.NOT_YET, Sentence.of("At night the air would run short."), why)
                        .becomes(Sentence.of("Move more air over the water first: surface, skimmer, air stone."));
            } else if (grown < Burden.SHORT_OF_AIR) {
                return Finding.of(
                        "oxygen", Call.MIND, Sentence.of("More air over the water will be needed as it grows."), why);
            } else if (Math.min(now, grown) < Burden.EASY_BREATHING) {
                return Finding.of("oxygen", Call.MIND, Sentence.of("Watch its breath before dawn."), why);
            }
            return Finding.of("oxygen", Call.YES, Sentence.of("The night’s air is enough, grown too."), why);
        }

        private Sentence.Part night(Range range) {
            return Sentence.figure(
                    Figure.between(Measure.SHARE, range.middle() / 100, range.low() / 100, range.high() / 100),
                    sources.night());
        }

        List<Finding> outage() {
            Limit act = sources.actOxygen();
            Sooner young = burden.act();
            Sooner grown = burden.grown().act();
            boolean sooner = young.sooner().middle() >= Burden.LESS_TIME;
            if (!sooner && grown.sooner().middle() < Burden.LESS_TIME) {
                return List.of();
            }
            return List.of(Finding.of(
                    "outage",
                    Call.MIND,
                    Sentence.of(
                            sooner
                                    ? "In a power cut you have less time."
                                    : "In a power cut you will have less time as it grows."),
                    Sentence.of(
                            "Oxygen falls to ",
                            Sentence.figure(Figure.exact(Measure.CONCENTRATION, act.value()), act.source()),
                            ", where you must act, ",
                            after(young.without()),
                            " without it, ",
                            after(young.with()),
                            " with it and ",
                            after(grown.with()),
                            " with it grown.")));
        }

        private Sentence after(Range range) {
            return Double.isInfinite(range.middle())
                    ? Sentence.of("not within a day")
                    : Sentence.of(
                            "after ",
                            Sentence.figure(
                                    Figure.between(Measure.DURATION, range.middle(), range.low(), range.high()),
                                    sources.twin()));
        }

        private static Figure share(double share) {
            return Figure.exact(Measure.SHARE, share);
        }
    }
}

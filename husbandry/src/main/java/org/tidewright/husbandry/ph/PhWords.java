package org.tidewright.husbandry.ph;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;

/** Tells what holds a pH where it is. */
final class PhWords {
    /** Least difference of pH that a well-kept probe shows. */
    static final double SHOWS = 0.05;

    /** Below this share hardly any tank stands; the readings are the likelier cause. */
    private static final double LEAST_SHARE = 100e-6;

    /** Of a doubt's variance: beyond it one cause is worth naming. */
    private static final double MOST_OF_IT = 0.5;

    private final PhCase water;
    private final List<Lever> levers;
    private final WaterCarbonDioxide carbonDioxide;
    private final Sources sources = new Sources();
    private final String law = carbonates(sources);
    private final String readings = sources.key("Your readings and their errors", Basis.YOUR_LOG, "as you gave them");
    private final String outdoorAir = OutdoorAir.key(sources);
    private final String roomAir;

    PhWords(PhCase water, List<Lever> levers) {
        this.water = water;
        this.levers = List.copyOf(levers);
        carbonDioxide = water.reading().carbonDioxide();
        roomAir =
                sources.key("The room's air", water.room().basis(), water.room().detail());
    }

    static String carbonates(Sources sources) {
        return sources.key(
                "Carbon dioxide, alkalinity and pH of seawater",
                Basis.PUBLISHED,
                "Lueker, Dickson and Keeling 2000; Weiss 1974; Dickson 1990; NBS scale by Takahashi et al. 1982; doubt of the"
                        + " constants by Orr et al. 2018");
    }

    Advice advice() {
        PhReport report = report();
        List<Sentence> remarks = new ArrayList<>();
        remarks.add(report.doubt());
        remarks.add(report.atRest());
        report.levers().forEach(told -> remarks.add(told.sentence()));
        remarks.add(report.balances());
        List<String> cautions = report.levers().stream()
                .flatMap(told -> told.cautions().stream())
                .distinct()
                .toList();
        return new Advice(report.lead(), remarks, report.figures(), report.working(), cautions, report.sources());
    }

    PhReport report() {
        LeverWords words = new LeverWords(water, sources);
        Sentence lead = lead();
        Sentence doubt = doubt();
        Sentence atRest = atRest();
        List<PhReport.LeverTold> told = levers.stream()
                .map(lever -> new PhReport.LeverTold(lever, words.told(lever), LeverWords.cautions(lever)))
                .toList();
        Advice cups = CupTest.instruction(water, sources);
        return new PhReport(
                lead,
                doubt,
                atRest,
                told,
                Sentence.of(
                        "These are balances that hold once all has come to rest, within days: what light, people and"
                                + " doses do in the course of a day, the page Day runs on the twin."),
                cups,
                figures(),
                working(),
                sources.all());
    }

    private Sentence lead() {
        double share = water.water().share(carbonDioxide.pressure());
        Side room = water.againstRoom();
        Side outdoors = water.againstOutdoors();
        if (share < LEAST_SHARE) {
            return Sentence.of(
                    "Measure pH and alkalinity again before you act: they would mean the carbon dioxide of air with ",
                    held(),
                    ", which hardly any tank has.");
        } else if (room == Side.MORE) {
            return more();
        } else if (room == Side.LESS) {
            return Sentence.of(
                    "Add nothing to move this pH: the water holds only the carbon dioxide of air with ",
                    held(),
                    " where the room's has ",
                    room(),
                    ", as it does while algae and corals in the light, or limewater, take it up faster than air brings it.");
        } else if (outdoors == Side.MORE) {
            return Sentence.of(
                    "Give the water fresher air if you want a higher pH, not more alkalinity: it holds the carbon dioxide of"
                            + " air with ",
                    held(),
                    ", more than outdoors and about what the room's ",
                    room(),
                    " give it. Whether the tank adds any, this reading is not good enough to say.");
        } else if (Math.abs(water.phOutdoors() - water.reading().ph()) <= SHOWS) {
            return Sentence.of(
                    "Leave the pH alone: it is what fresh air gives. At rest with outdoor air the meter would read ",
                    Sentence.figure(Figure.exact(Measure.PH, water.phOutdoors()), outdoorAir),
                    ", and it cannot tell the two apart.");
        }
        return Sentence.of(
                "Do not act on this reading: it is not good enough to say whether the water holds more or less carbon dioxide"
                        + " than the room's air. It may be that of air with ",
                held(),
                ", and the room's has ",
                room(),
                ". Set the electrode with fresh buffers, or do the test with two cups.");
    }

    private Sentence more() {
        AiredWater aired = water.water();
        double fromRoom = aired.pressure(water.room().share()) - aired.pressure(OutdoorAir.SHARE);
        double fromTank = carbonDioxide.pressure() - aired.pressure(water.room().share());
        Sentence holds = Sentence.of("holds the carbon dioxide of air with ", held(), ", the room's has ", room());
        return fromTank >= fromRoom
                ? Sentence.of(
                        "Move more air over the water: it ",
                        holds,
                        ", so it is the tank's own breath that keeps the pH down, and not its alkalinity. At rest with the"
                                + " room's air the meter would read ",
                        Sentence.figure(Figure.exact(Measure.PH, water.phInRoom()), law),
                        ".")
                : Sentence.of(
                        "Open a window, or lead outdoor air to the skimmer: the water ",
                        holds,
                        ", and of what it has above outdoor air the room brings the larger part. At rest with outdoor air the"
                                + " meter would read ",
                        Sentence.figure(Figure.exact(Measure.PH, water.phOutdoors()), law),
                        ".");
    }

    private Sentence.Part held() {
        AiredWater aired = water.water();
        return Sentence.figure(
                toTen(
                        Measure.SHARE_OF_AIR,
                        aired.share(carbonDioxide.pressure()),
                        aired.share(carbonDioxide.low()),
                        aired.share(carbonDioxide.high())),
                law);
    }

    private Sentence.Part room() {
        double share = water.room().share();
        double doubt =
                Math.exp(WaterCarbonDioxide.NINETY_PER_CENT * water.room().logError());
        return Sentence.figure(Figure.between(Measure.SHARE_OF_AIR, share, share / doubt, share * doubt), roomAir);
    }

    /** To ten ppm or µatm: nothing here is surer. */
    private static Figure toTen(Measure measure, double value, double low, double high) {
        return Figure.between(measure, toTen(value), toTen(low), toTen(high));
    }

    private static double toTen(double value) {
        return Math.rint(value * 1e5) / 1e5;
    }

    private Figure pressure() {
        return toTen(Measure.PARTIAL_PRESSURE, carbonDioxide.pressure(), carbonDioxide.low(), carbonDioxide.high());
    }

    private Sentence doubt() {
        double ofPh = carbonDioxide.ofPh() / carbonDioxide.logError();
        Sentence whose = ofPh * ofPh > MOST_OF_IT
                ? Sentence.of(
                        "Most of the doubt is the electrode's ",
                        Sentence.figure(
                                Figure.about(
                                        Measure.PH,
                                        water.reading().ph(),
                                        water.reading().phError()),
                                readings),
                        ". ")
                : Sentence.of("Most of the doubt is not the electrode's but that of the other readings. ");
        return Sentence.of(
                whose,
                "Below ",
                Figure.exact(Measure.PH, water.phThatTellsMore()),
                " a reading as good as this tells that the water holds more than the room's air gives, above ",
                Figure.exact(Measure.PH, water.phThatTellsLess()),
                " that it holds less.");
    }

    private Sentence atRest() {
        return Sentence.of(
                "At this alkalinity, ",
                Figure.about(
                        Measure.ALKALINITY,
                        water.reading().alkalinity(),
                        water.reading().alkalinityError()),
                ", the meter would read ",
                Sentence.figure(Figure.exact(Measure.PH, water.phInRoom()), law),
                " at rest with the room's air and ",
                Sentence.figure(Figure.exact(Measure.PH, water.phOutdoors()), outdoorAir),
                " with outdoor air.");
    }

    private List<Advice.Told> figures() {
        List<Advice.Told> figures = new ArrayList<>();
        figures.add(new Advice.Told("carbon dioxide in the water", pressure(), law));
        figures.add(new Advice.Told(
                "carbon dioxide in the room's air",
                Figure.exact(
                        Measure.PARTIAL_PRESSURE,
                        water.water().pressure(water.room().share())),
                roomAir));
        figures.add(new Advice.Told("pH at rest with the room's air", Figure.exact(Measure.PH, water.phInRoom()), law));
        figures.add(new Advice.Told(
                "pH at rest with outdoor air", Figure.exact(Measure.PH, water.phOutdoors()), outdoorAir));
        return figures;
    }

    private List<Sentence> working() {
        return List.of(
                Sentence.of(
                        Figure.about(
                                Measure.ALKALINITY,
                                water.reading().alkalinity(),
                                water.reading().alkalinityError()),
                        ", pH ",
                        Figure.about(
                                Measure.PH,
                                water.reading().ph(),
                                water.reading().phError()),
                        ", salinity ",
                        Figure.about(
                                Measure.SALINITY,
                                water.reading().salinity(),
                                water.reading().salinityError()),
                        ", ",
                        Figure.about(
                                Measure.TEMPERATURE,
                                water.reading().temperature(),
                                water.reading().temperatureError()),
                        " together mean a partial pressure of ",
                        pressure(),
                        "."),
                Sentence.of(
                        "The air over the water is moist: ",
                        Figure.exact(Measure.SHARE_OF_AIR, water.room().share()),
                        " of dry air are ",
                        Figure.exact(
                                Measure.PARTIAL_PRESSURE,
                                water.water().pressure(water.room().share())),
                        " there, ",
                        Figure.exact(Measure.SHARE_OF_AIR, OutdoorAir.SHARE),
                        " are ",
                        Figure.exact(Measure.PARTIAL_PRESSURE, water.water().pressure(OutdoorAir.SHARE)),
                        "."));
    }
}

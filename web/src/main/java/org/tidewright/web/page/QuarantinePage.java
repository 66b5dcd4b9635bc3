package org.tidewright.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.husbandry.quarantine.BareTankWords;
import org.tidewright.husbandry.quarantine.Batch;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.husbandry.quarantine.Watch;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.web.chart.CourseChart;
import org.tidewright.web.chart.CourseScale;
import org.tidewright.web.chart.Curve;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * A quarantine tank: what today asks for, the look in two taps, every day so far, until when the animals stay, ammonia, what
 * they were treated with, and their way to the display.
 *
 * @param serves name of the system they go to
 * @param servesHref null where no system goes by that name
 * @param echo what became of what was just sent; null for nothing
 * @param calendar null where nobody is in the tank
 */
public record QuarantinePage(
        String href,
        String token,
        String serves,
        @Nullable String servesHref,
        String note,
        @Nullable String echo,
        Told duty,
        LookForm look,
        List<Batch.Animals> animals,
        @Nullable WatchCalendar calendar,
        @Nullable Told end,
        Told ammonia,
        List<ToldLine> ammoniaFigures,
        Markup scale,
        CoursePanel panel,
        String panelTried,
        String panelBeside,
        List<Markup> working,
        List<TreatmentLine> treatments,
        MoveForm move,
        List<Source> sources) {
    private static final double DAY = 86_400;
    private static final int DAYS = 30;
    private static final int A_DAY = 24;
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    /** An answer, its sentences ready to show. */
    public record Told(Markup lead, List<Markup> remarks, List<String> cautions) {
        static Told of(Advice advice, UnitSystem units) {
            return new Told(
                    SentenceMarkup.of(advice.lead(), units), sentences(advice.remarks(), units), advice.cautions());
        }
    }

    /** Something that was given. */
    public record TreatmentLine(String at, String words, String href) {}

    /**
     * The page.
     *
     * @param look null for an empty form
     * @param move null for one that is filled in with who is there
     */
    static QuarantinePage of(
            Desk desk,
            SystemView view,
            String token,
            @Nullable LookForm look,
            @Nullable MoveForm move,
            @Nullable String echo,
            UnitSystem units) {
        QuarantineStudy study = Boxes.study(desk, view);
        BareTankWater water = desk.bareTank(view.plan());
        Sources sources = new Sources();
        Told duty = Told.of(study.duty(sources), units);
        Watch watch = study.watch();
        Told end = watch == null ? null : Told.of(study.end(sources), units);
        Advice ammonia = BareTankWords.of(water, sources);
        CourseScale scale = CourseScale.ofDays(DAYS);
        String beside = water.isFiltered() ? "No change, and a sponge that stands still" : "No change of water";
        Batch batch = study.batch();
        String href = Reader.href(view.entry());
        return new QuarantinePage(
                href,
                token,
                study.quarantine().serves(),
                Boxes.served(desk, study.quarantine())
                        .map(display -> Reader.href(display.entry()) + "/quarantine")
                        .orElse(null),
                note(study),
                echo,
                duty,
                look == null ? LookForm.empty() : look,
                batch == null ? List.of() : batch.present(),
                watch == null ? null : WatchCalendar.of(watch, study.today()),
                end,
                Told.of(ammonia, units),
                ammonia.figures().stream()
                        .map(told -> ToldLine.of(told.name(), told.figure(), told.source(), units))
                        .toList(),
                new Markup(scale.svg()),
                panel(water, scale, beside, units),
                "By the plan",
                beside,
                sentences(ammonia.working(), units),
                treatments(batch, href, units),
                move == null ? MoveForm.of(batch) : move,
                sources.all());
    }

    private static String note(QuarantineStudy study) {
        Watch watch = study.watch();
        LocalDate until = study.dryUntil();
        if (watch != null) {
            int day = watch.dayOf(study.today());
            int days = watch.governing().days();
            return day <= days ? "Day " + day + " of " + days : "Watched for " + days + " days";
        }
        return until != null && study.today().isBefore(until) ? "Empty, drying" : "Empty";
    }

    private static CoursePanel panel(BareTankWater water, CourseScale scale, String beside, UnitSystem units) {
        BareTankWater.Run planned = water.planned();
        BareTankWater.Run other = water.unfiltered();
        CourseChart chart = new CourseChart(
                "free",
                "Free ammonia",
                "mg/L N",
                3,
                planned.course().time(),
                planned.course().of(Quantity.FREE_AMMONIA),
                other.course().of(Quantity.FREE_AMMONIA),
                List.of(new Curve.Bound("harm", BareTankWater.RED, false, null)),
                List.of(),
                List.of());
        return CoursePanel.of(
                chart,
                scale,
                units,
                FigureText.number(planned.peak(), 3),
                "highest by the plan, on day " + FigureText.number(Math.ceil(planned.peakDay()), 0),
                "By the plan",
                beside,
                5 * A_DAY,
                time -> "day " + Math.round(time / DAY));
    }

    private static List<TreatmentLine> treatments(@Nullable Batch batch, String href, UnitSystem units) {
        List<TreatmentLine> lines = new ArrayList<>();
        for (Line line : batch == null ? List.<Line>of() : batch.lines()) {
            if (line.event() instanceof Event.Treated) {
                String remark = line.remark().isEmpty() ? "" : " (" + line.remark() + ")";
                lines.add(
                        0,
                        new TreatmentLine(
                                DATE.format(line.at()),
                                NoteWords.of(line.event(), units) + remark,
                                href + "/log/" + line.id()));
            }
        }
        return lines;
    }

    private static List<Markup> sentences(List<Sentence> sentences, UnitSystem units) {
        return sentences.stream()
                .map(sentence -> SentenceMarkup.of(sentence, units))
                .toList();
    }

    /** The log with a line begun. */
    public String logHref(String line) {
        return href + "/log?line=" + URLEncoder.encode(line, StandardCharsets.UTF_8);
    }
}

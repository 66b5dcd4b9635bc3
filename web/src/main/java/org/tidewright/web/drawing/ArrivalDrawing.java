package org.tidewright.web.drawing;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.QuarantineTank;
import org.tidewright.husbandry.wishlist.ArrivalAnswer;

/**
 * Arrivals along the months: for each animal when it waits, is in quarantine and in the display; for each quarantine tank when it is
 * taken and when it stands dry. Places along the time are shares of the width, letters keep their size.
 */
public final class ArrivalDrawing {
    private static final double HEAD = 26;
    private static final double ROW = 42;
    private static final double NAME = 16;
    private static final double BAR = 12;
    private static final double BAR_AT = 22;
    private static final double FOOT = 10;

    /** Days behind the last arrival, so that its bar can be seen. */
    private static final int BEHIND = 21;

    /** Names of months beside each other on a phone. */
    private static final int MOST_NAMES = 6;

    private static final double RIGHT_HALF = 50;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private final ArrivalAnswer answer;
    private final List<ArrivalAnswer.Coming> coming;
    private final List<QuarantineTank> tanks;
    private final LocalDate from;
    private final LocalDate to;
    private final double height;
    private final SvgWriter svg = new SvgWriter();

    private ArrivalDrawing(ArrivalAnswer answer) {
        this.answer = answer;
        coming = answer.coming().stream()
                .filter(each -> each.arrival().stage() != Stage.IN_DISPLAY)
                .toList();
        tanks = answer.study().plan().request().tanks();
        LocalDate today = answer.study().household().today();
        from = coming.stream().map(each -> each.arrival().in()).reduce(today, (a, b) -> b.isBefore(a) ? b : a);
        to = coming.stream()
                .map(each -> each.arrival().out())
                .reduce(today, (a, b) -> b.isAfter(a) ? b : a)
                .plusDays(BEHIND);
        height = HEAD + ROW * (coming.size() + tanks.size()) + FOOT;
    }

    /** As an SVG element without a width of its own. */
    public static String of(ArrivalAnswer answer) {
        return new ArrivalDrawing(answer).drawn();
    }

    private String drawn() {
        svg.open("svg")
                .has("class", "arrivals")
                .has("height", height)
                .has("role", "img")
                .has("aria-label", told());
        svg.open("defs")
                .open("pattern")
                .has("id", "stay-hatch")
                .has("width", 5.0)
                .has("height", 5.0)
                .has("patternUnits", "userSpaceOnUse")
                .open("path")
                .has("class", "stay-line")
                .has("d", "M-1,6l7,-7M-1,1l2,-2M4,6l2,-2")
                .close()
                .close()
                .close();
        months();
        double y = HEAD;
        for (ArrivalAnswer.Coming each : coming) {
            animals(each, y);
            y += ROW;
        }
        svg.open("line")
                .has("class", "seam")
                .has("x1", 0.0)
                .has("x2", "100%")
                .has("y1", y)
                .has("y2", y)
                .close();
        for (QuarantineTank tank : tanks) {
            tank(tank, y);
            y += ROW;
        }
        today();
        return svg.close().finished();
    }

    /** A line where each month begins. */
    private void months() {
        List<YearMonth> months = new ArrayList<>();
        for (YearMonth month = YearMonth.from(from).plusMonths(1);
                !month.atDay(1).isAfter(to);
                month = month.plusMonths(1)) {
            months.add(month);
        }
        int step = (months.size() + MOST_NAMES - 1) / MOST_NAMES;
        for (int i = 0; i < months.size(); i++) {
            YearMonth month = months.get(i);
            String x = x(month.atDay(1));
            svg.open("line")
                    .has("class", "grid")
                    .has("x1", x)
                    .has("x2", x)
                    .has("y1", HEAD - 8)
                    .has("y2", height)
                    .close();
            if (i % step == 0 && share(month.atDay(1)) > 14 && share(month.atDay(1)) < 94) {
                String name = month.getMonthValue() == 1 ? Integer.toString(month.getYear()) : MONTH.format(month);
                svg.open("text")
                        .has("class", "tick")
                        .has("x", x)
                        .has("dx", 3.0)
                        .has("y", 14.0)
                        .text(name)
                        .close();
            }
        }
    }

    private void animals(ArrivalAnswer.Coming each, double y) {
        Arrival arrival = each.arrival();
        String common = each.animals().species().name().common();
        int count = each.animals().count();
        String name = (count == 1 ? "" : count + " × ") + common;
        boolean right = share(arrival.in()) > RIGHT_HALF;
        svg.open("text")
                .has("class", "strong halo")
                .has("x", right ? "100%" : x(arrival.in()))
                .has("y", y + NAME)
                .has("text-anchor", right ? "end" : "start")
                .text(name)
                .close();
        double middle = y + BAR_AT + BAR / 2;
        svg.open("line")
                .has("class", "waits")
                .has("x1", x(answer.study().household().today()))
                .has("x2", x(arrival.in()))
                .has("y1", middle)
                .has("y2", middle)
                .close();
        bar("stay", arrival.in(), arrival.out(), y);
        bar("home", arrival.out(), to, y);
    }

    /** When it is taken, each stay once, and dry behind it. */
    private void tank(QuarantineTank tank, double y) {
        svg.open("text")
                .has("class", "strong halo")
                .has("x", "0%")
                .has("y", y + NAME)
                .text(tank.name())
                .close();
        TreeMap<LocalDate, LocalDate> stays = new TreeMap<>();
        coming.stream()
                .map(ArrivalAnswer.Coming::arrival)
                .filter(arrival -> tank.name().equals(arrival.tank()))
                .forEach(arrival -> stays.merge(arrival.in(), arrival.out(), (a, b) -> a.isAfter(b) ? a : b));
        LocalDate today = answer.study().household().today();
        if (tank.freeFrom().isAfter(today)) {
            LocalDate empty = tank.freeFrom().minusDays(tank.dryDays());
            bar("stay", today, empty.isBefore(today) ? today : empty, y);
            bar("dry", empty.isBefore(today) ? today : empty, tank.freeFrom(), y);
        }
        stays.forEach((in, out) -> {
            bar("stay", in, out, y);
            bar("dry", out, out.plusDays(tank.dryDays()), y);
        });
    }

    private void bar(String kind, LocalDate begins, LocalDate ends, double y) {
        if (ends.isAfter(begins)) {
            svg.open("rect")
                    .has("class", kind)
                    .has("x", x(begins))
                    .has("width", percent(share(ends) - share(begins)))
                    .has("y", y + BAR_AT)
                    .has("height", BAR)
                    .close();
        }
    }

    private void today() {
        String x = x(answer.study().household().today());
        svg.open("line")
                .has("class", "today")
                .has("x1", x)
                .has("x2", x)
                .has("y1", HEAD - 8)
                .has("y2", height)
                .close();
        svg.open("text")
                .has("class", "tick")
                .has("x", x)
                .has("y", 14.0)
                .text("today")
                .close();
    }

    private double share(LocalDate day) {
        double all = ChronoUnit.DAYS.between(from, to);
        return Math.max(0, Math.min(100, 100 * ChronoUnit.DAYS.between(from, day) / all));
    }

    private String x(LocalDate day) {
        return percent(share(day));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f%%", share);
    }

    /** The table beside it says all of it; this says what is drawn. */
    private String told() {
        return "Days of " + coming.size() + (coming.size() == 1 ? " arrival" : " arrivals") + " and of "
                + tanks.size() + (tanks.size() == 1 ? " quarantine tank" : " quarantine tanks") + " from "
                + DAY.format(from) + " to " + DAY.format(to) + ", as in the table.";
    }
}

package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.wishlist.ArrivalAnswer;
import org.tidewright.husbandry.wishlist.Household;
import org.tidewright.husbandry.wishlist.Money;
import org.tidewright.husbandry.wishlist.WishLine;
import org.tidewright.husbandry.wishlist.WishList;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.drawing.ArrivalDrawing;

/**
 * Whom a keeper wishes for, and when each comes.
 *
 * @param echo what became of what was just sent; null for nothing
 * @param fileFaults what is wrong in the kept file; nothing is planned then
 * @param drawing null where nobody comes
 * @param open whether the list can be changed here
 * @param asked whether the twin is still being asked how much may come at once
 * @param promise the caution to read with the first sentence
 * @param cautions those of buying, watching and moving
 * @param keepable whether there are days that are not kept yet
 */
public record ArrivalsPage(
        String href,
        String token,
        @Nullable String echo,
        Markup lead,
        List<String> fileFaults,
        List<String> ownFaults,
        List<Markup> remarks,
        @Nullable Markup drawing,
        List<Row> rows,
        List<Staying> staying,
        List<Markup> gone,
        List<Month> months,
        ArrivalsForm form,
        boolean open,
        boolean asked,
        boolean keepable,
        boolean kept,
        List<String> promise,
        List<String> cautions,
        List<Source> sources) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter OF_YEAR = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    /** Further away the year is no longer plain. */
    private static final int FAR = 300;

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);

    /**
     * Animals with their days.
     *
     * @param note where they are quarantined, where there is a choice; that nothing else takes the time
     * @param moved from which kept days; null where they did not
     */
    public record Row(
            String who,
            String note,
            String comes,
            String enters,
            List<Markup> why,
            @Nullable Markup moved) {}

    /** A wish without a day. */
    public record Staying(String who, String mark, String word, List<Markup> why, List<Markup> becomes) {}

    /** Money of a month. */
    public record Month(String month, String spent, String of, String note) {}

    static ArrivalsPage of(
            Desk desk,
            SystemView view,
            String token,
            @Nullable ArrivalsForm typed,
            @Nullable String echo,
            UnitSystem units) {
        WishFiles file = WishFiles.of(desk, view);
        Household household = Households.of(desk, view);
        ArrivalAnswer answer = ArrivalAnswer.of(file.list(), household);
        ArrivalsForm form = typed != null
                ? typed
                : ArrivalsForm.of(open(file.list(), answer), file.mark(), household.catalogue(), units);
        List<String> cautions = answer.advice().cautions();
        boolean comes = answer.coming().stream().anyMatch(each -> each.arrival().stage() != Stage.IN_DISPLAY);
        return new ArrivalsPage(
                Reader.href(view.entry()),
                token,
                echo,
                lead(view, file, answer, units),
                file.faults(),
                desk.species().faults(),
                told(answer.advice().remarks(), units),
                comes ? new Markup(ArrivalDrawing.of(answer)) : null,
                answer.coming().stream()
                        .map(each -> row(each, household, units))
                        .toList(),
                answer.staying().stream().map(each -> staying(each, units)).toList(),
                told(answer.gone(), units),
                answer.months().stream().map(month -> month(month, answer)).toList(),
                form,
                file.faults().isEmpty() && view.plan().quarantine() == null,
                household.calm() == null && comes,
                comes && isNew(answer),
                file.list().isKept(),
                cautions.subList(0, Math.min(1, cautions.size())),
                cautions.subList(Math.min(1, cautions.size()), cautions.size()),
                answer.advice().sources());
    }

    private static Markup lead(SystemView view, WishFiles file, ArrivalAnswer answer, UnitSystem units) {
        if (!file.faults().isEmpty()) {
            return Markup.words("Mend the file of this wish list first: it cannot be read, so nothing was planned.");
        } else if (view.plan().quarantine() != null) {
            return Markup.words("Plan arrivals on the page of "
                    + view.plan().quarantine().serves() + ": this is the quarantine tank they come through.");
        }
        return SentenceMarkup.of(answer.advice().lead(), units);
    }

    /** Whether keeping the days would change anything. */
    private static boolean isNew(ArrivalAnswer answer) {
        var days = answer.study().days();
        List<String> ids = answer.study().list().ids();
        for (int i = 0; i < ids.size(); i++) {
            WishLine.Kept now = days.get(ids.get(i));
            WishLine.Kept was = answer.study().list().lines().get(i).kept();
            boolean same = now == null
                    || (was != null
                            && was.comes().equals(now.comes())
                            && was.enters().equals(now.enters()));
            if (!same) {
                return true;
            }
        }
        return false;
    }

    /** The lines that have not come to their end. */
    public static WishList open(WishList list, ArrivalAnswer answer) {
        Set<String> done = new HashSet<>(answer.study().done());
        List<WishLine> open = new ArrayList<>();
        List<String> ids = list.ids();
        for (int i = 0; i < ids.size(); i++) {
            if (!done.contains(ids.get(i))) {
                open.add(list.lines().get(i));
            }
        }
        return new WishList(open, list.budget(), list.nothingBefore());
    }

    private static List<Markup> told(List<Sentence> sentences, UnitSystem units) {
        return sentences.stream().map(each -> SentenceMarkup.of(each, units)).toList();
    }

    private static Row row(ArrivalAnswer.Coming coming, Household household, UnitSystem units) {
        LocalDate today = household.today();
        Arrival arrival = coming.arrival();
        boolean choice = household.boxes().size() > 1 && arrival.tank() != null;
        String alone = coming.why().isEmpty() && arrival.stage() != Stage.IN_DISPLAY
                ? "Only its own quarantine takes the time."
                : "";
        String where = choice ? "Through " + arrival.tank() + ". " + alone : alone;
        String comes = switch (arrival.stage()) {
            case PLANNED -> day(arrival.in(), today);
            case IN_QUARANTINE -> "there since " + day(arrival.in(), today);
            case IN_DISPLAY -> day(arrival.in(), today);
        };
        String enters = arrival.stage() == Stage.IN_DISPLAY
                ? "there since " + day(arrival.out(), today)
                : day(arrival.out(), today);
        return new Row(
                name(coming),
                where.strip(),
                comes,
                enters,
                told(coming.why(), units),
                coming.moved() == null ? null : SentenceMarkup.of(coming.moved(), units));
    }

    private static String name(ArrivalAnswer.Coming coming) {
        int count = coming.animals().count();
        return (count == 1 ? "" : count + " × ")
                + coming.animals().species().name().common();
    }

    private static Staying staying(ArrivalAnswer.Staying staying, UnitSystem units) {
        boolean later = !staying.becomes().isEmpty();
        int count = staying.animals().count();
        return new Staying(
                (count == 1 ? "" : count + " × ")
                        + staying.animals().species().name().common(),
                later ? "close" : "fails",
                later ? "not yet" : "no",
                told(staying.why(), units),
                told(staying.becomes(), units));
    }

    private static Month month(ArrivalAnswer.Month month, ArrivalAnswer answer) {
        Long budget = answer.study().list().budget();
        return new Month(
                MONTH.format(month.month()),
                Money.text(month.spent()),
                budget == null ? "" : "of " + Money.text(budget),
                month.unpriced() == 0 ? "" : "and " + month.unpriced() + " without a price");
    }

    private static String day(LocalDate date, LocalDate today) {
        return (Math.abs(ChronoUnit.DAYS.between(today, date)) < FAR ? DAY : OF_YEAR).format(date);
    }
}

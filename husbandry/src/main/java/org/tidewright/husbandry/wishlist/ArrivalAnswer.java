package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.livestock.Animals;

/**
 * A plan of arrivals as a keeper is told it; its sentences share the letters of the advice's sources.
 *
 * @param advice what to do first, and what else belongs to it
 * @param coming by the day they go into the display
 * @param staying wishes that have no day
 * @param gone wishes that came and are no more
 * @param months in which something is bought
 */
public record ArrivalAnswer(
        ArrivalStudy study,
        Advice advice,
        List<Coming> coming,
        List<Staying> staying,
        List<Sentence> gone,
        List<Month> months) {
    public ArrivalAnswer {
        coming = List.copyOf(coming);
        staying = List.copyOf(staying);
        gone = List.copyOf(gone);
        months = List.copyOf(months);
    }

    /** Plans a list and tells it. */
    public static ArrivalAnswer of(WishList list, Household household) {
        return new ArrivalWords(ArrivalStudy.of(list, household)).answer();
    }

    /**
     * Animals with their days.
     *
     * @param why they do not come earlier; empty where only their quarantine takes the time
     * @param moved from which kept days to which; null where none were kept or none moved
     */
    public record Coming(
            Animals animals,
            Arrival arrival,
            List<Sentence> why,
            @Nullable Sentence moved) {
        public Coming {
            why = List.copyOf(why);
        }
    }

    /**
     * A wish without a day.
     *
     * @param refused whether the rules of livestock say so
     * @param why the worst first
     * @param becomes what would change it; empty where nothing is known to
     */
    public record Staying(String id, Animals animals, boolean refused, List<Sentence> why, List<Sentence> becomes) {
        public Staying {
            why = List.copyOf(why);
            becomes = List.copyOf(becomes);
        }
    }

    /**
     * What a month's arrivals cost, in hundredths of the currency's unit.
     *
     * @param unpriced arrivals whose price is not known
     */
    public record Month(YearMonth month, long spent, int unpriced) {}

    /** The first day on which something is to be bought; null for none. */
    public @Nullable LocalDate firstDay() {
        return coming.stream()
                .filter(each -> each.arrival().stage() == Arrival.Stage.PLANNED)
                .map(each -> each.arrival().in())
                .min(LocalDate::compareTo)
                .orElse(null);
    }
}

package org.tidewright.husbandry.quantity;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tidewright.husbandry.dosing.DoseAdvice;
import org.tidewright.husbandry.dosing.Settling;
import org.tidewright.husbandry.journal.Event;

/** A lever that is moved again before its last move can be told from noise. */
public final class EarlyMove {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

    private EarlyMove() {}

    /**
     * Why a move is too early, in sentences; empty where it is not, or where the advice itself is to move.
     *
     * @param study of what was written before the move
     * @param zone in which days are told
     */
    public static Optional<String> reason(WaterStudy study, Event event, ZoneId zone) {
        if (!(event instanceof Event.LeverMoved moved)) {
            return Optional.empty();
        }
        List<QuantityStudy> settling = study.quantities().stream()
                .filter(each -> each.decision() instanceof DoseAdvice.Settle settle
                        && settle.settling().lever().equals(moved.lever()))
                .toList();
        return settling.stream()
                .flatMap(each -> Optional.ofNullable(each.settling()).stream())
                .max((a, b) -> a.until().compareTo(b.until()))
                .map(longest -> reason(longest, names(settling), zone));
    }

    private static String reason(Settling settling, String quantities, ZoneId zone) {
        String until = DAY.format(settling.until().atZone(zone));
        String first = "Leave the " + settling.lever() + " alone until " + until + ": it was moved on "
                + DAY.format(settling.moved().atZone(zone)) + ", and ";
        return settling.told()
                ? first + "your tests of " + quantities + " cannot tell before what that did. A second move now answers"
                        + " noise, and hides what the first one did."
                : first + "that was less than your tests of " + quantities + " can tell. A second move now answers"
                        + " noise; after that day go by the level alone.";
    }

    private static String names(List<QuantityStudy> settling) {
        return settling.stream().map(study -> study.quantity().words()).collect(Collectors.joining(" and "));
    }
}

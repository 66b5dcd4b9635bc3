package org.tidewright.husbandry.arrival;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.arrival.Wish.After;
import org.tidewright.testkit.Draw;

/** Wish lists as nobody would write them, but for their numbers. */
final class RandomRequest {
    private final Draw draw;
    private final int days;
    private final LocalDate start;
    private final List<String> ids = new ArrayList<>();

    private RandomRequest(Draw draw, int days) {
        this.draw = draw;
        this.days = days;
        start = LocalDate.of(2031, 3, 1).plusDays(draw.whole(0, 30));
    }

    /** At most so many wishes, within about so many days. */
    static ArrivalRequest of(Draw draw, int wishes, int days) {
        return new RandomRequest(draw, days).request(wishes);
    }

    private ArrivalRequest request(int most) {
        int count = draw.whole(1, most);
        for (int i = 0; i < count; i++) {
            ids.add("w" + i);
        }
        List<Wish> wishes = new ArrayList<>();
        for (String id : ids) {
            wishes.add(wish(id));
        }
        List<QuarantineTank> tanks = new ArrayList<>();
        int tankCount = draw.whole(0, 12) == 0 ? 0 : draw.whole(1, 2);
        for (int i = 0; i < tankCount; i++) {
            tanks.add(new QuarantineTank(
                    "t" + i,
                    grams(draw.whole(15, 80)),
                    draw.whole(1, 3),
                    start.plusDays(draw.whole(-5, days / 8)),
                    draw.whole(0, 3),
                    draw.whole(0, days / 10)));
        }
        Set<Trouble> troubles = new HashSet<>();
        Set<PreyFirst> preyFirst = new HashSet<>();
        for (String one : ids) {
            for (String other : ids) {
                if (one.compareTo(other) < 0 && draw.whole(0, 3) == 0) {
                    troubles.add(new Trouble(one, other));
                }
                if (!one.equals(other) && draw.whole(0, 12) == 0) {
                    preyFirst.add(new PreyFirst(one, other, draw.whole(1, days / 5)));
                }
            }
        }
        return new ArrivalRequest(
                start, draw.whole(days / 2, days), wishes, tanks, pace(), troubles, preyFirst, List.of());
    }

    private Wish wish(String id) {
        List<After> after = new ArrayList<>();
        Set<String> apart = new HashSet<>();
        for (String other : ids) {
            if (!other.equals(id) && draw.whole(0, 15) == 0) {
                after.add(new After(other, draw.whole(1, days / 5)));
            }
            if (!other.equals(id) && draw.whole(0, 8) == 0) {
                apart.add(other);
            }
        }
        return new Wish(
                id,
                "wish " + id,
                1,
                grams(draw.whole(1, 40)),
                draw.whole(1, 5),
                0.01 * draw.whole(1, 12),
                draw.whole(0, 5) == 0 ? 0 : draw.whole(1, days / 5),
                draw.whole(0, 3) == 0 ? null : draw.oneOf(1000L, 2500L, 6000L),
                notBefore("the shop"),
                notBefore("the display"),
                after,
                apart);
    }

    private @Nullable NotBefore notBefore(String whose) {
        return draw.whole(0, 4) == 0 ? new NotBefore(start.plusDays(draw.whole(-3, days / 3)), whose) : null;
    }

    private Pace pace() {
        return new Pace(
                grams(draw.whole(0, 80)),
                draw.oneOf(0.0, 0.25, 0.5, 1.0),
                grams(draw.whole(5, 40)),
                draw.whole(1, Math.max(1, days / 8)),
                draw.whole(0, 2) == 0 ? start.minusDays(draw.whole(0, 10)) : null,
                draw.whole(0, 2) == 0 ? null : draw.oneOf(3000L, 8000L));
    }

    private static double grams(int grams) {
        return grams / 1000.0;
    }
}

package org.tidewright.husbandry.wishlist;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.arrival.Reason;
import org.tidewright.seawater.unit.Unit;

/** Every reason of the planner in a sentence, with names and dates. */
final class ReasonWords {
    private final ArrivalStudy study;
    private final ArrivalSources sources;

    ReasonWords(ArrivalStudy study, ArrivalSources sources) {
        this.study = study;
        this.sources = sources;
    }

    /** All of it; what says of one tank that these are in it and that it then stands dry is one sentence. */
    List<Sentence> of(String id, List<Reason> reasons) {
        List<Sentence> told = new ArrayList<>();
        Set<String> tanks = new HashSet<>();
        for (Reason reason : reasons) {
            String tank = reason instanceof Reason.TankTaken taken
                    ? taken.tank()
                    : reason instanceof Reason.Dry dry ? dry.tank() : null;
            if (tank == null) {
                told.add(of(id, reason));
            } else if (tanks.add(tank)) {
                told.add(tank(tank, reasons));
            }
        }
        return told.stream().distinct().toList();
    }

    private Sentence tank(String tank, List<Reason> reasons) {
        List<String> by = new ArrayList<>();
        LocalDate left = null;
        LocalDate free = null;
        for (Reason reason : reasons) {
            if (reason instanceof Reason.TankTaken taken && taken.tank().equals(tank)) {
                if (taken.by() == null) {
                    free = later(free, taken.until());
                } else {
                    by.add(taken.by());
                    left = later(left, taken.until());
                }
            } else if (reason instanceof Reason.Dry dry && dry.tank().equals(tank)) {
                free = later(free, dry.until());
            }
        }
        if (left == null) {
            return Sentence.of(
                    tank + " is not free until " + day(requireNonNull(free))
                            + ": who is in it is watched, then it stands dry",
                    sources.dry(),
                    ".");
        }
        String taken = tank + " is taken by " + names(by) + " until " + day(left);
        return free == null || !free.isAfter(left)
                ? Sentence.of(taken + ".")
                : Sentence.of(taken + ", then stands dry until " + day(free), sources.dry(), ".");
    }

    private static LocalDate later(@Nullable LocalDate one, LocalDate other) {
        return one == null || other.isAfter(one) ? other : one;
    }

    /** Why a wish waits, or has no day. */
    Sentence of(String id, Reason reason) {
        if (reason instanceof Reason.TankTaken taken) {
            return tank(taken.tank(), List.of(reason));
        } else if (reason instanceof Reason.Dry dry) {
            return tank(dry.tank(), List.of(reason));
        } else if (reason instanceof Reason.Paced paced) {
            return paced(id, paced);
        } else if (reason instanceof Reason.Budget budget) {
            return Sentence.of("The money of " + DayWords.of(budget.month(), today()) + " does not reach for it.");
        } else if (reason instanceof Reason.ComesAfter after) {
            return after(after);
        } else if (reason instanceof Reason.TimidFirst timid) {
            return timid(id, timid.id());
        } else if (reason instanceof Reason.Prey prey) {
            return prey(id, prey.id());
        } else if (reason instanceof Reason.Earliest earliest) {
            return Sentence.of("Not before " + day(earliest.day()) + ": " + earliest.words() + ".");
        } else if (reason instanceof Reason.Shared shared) {
            return Sentence.of(
                    "It shares its quarantine with " + name(shared.with()) + ", which waits: ",
                    of(shared.with(), shared.why()));
        } else if (reason instanceof Reason.LongerStay longer) {
            return Sentence.of("It shares its quarantine with " + name(longer.with()) + ", which has to stay longer.");
        } else if (reason instanceof Reason.NoTank none) {
            return noTank(none);
        } else if (reason instanceof Reason.TooMuch much) {
            return Sentence.of(
                    "It weighs ",
                    grams(load(id)),
                    ", and the display takes at most ",
                    grams(much.room()),
                    " at once",
                    sources.pace(),
                    ". Wish for fewer or smaller ones.");
        } else if (reason instanceof Reason.TooLate late) {
            return Sentence.of(
                    "Behind all others it would go in on " + day(late.day()) + ", later than this plan looks ahead.");
        }
        throw new IllegalArgumentException("no words for " + reason);
    }

    private Sentence paced(String id, Reason.Paced paced) {
        int days = study.plan().request().pace().daysBetween();
        String near = paced.ids().isEmpty()
                ? "The last addition was on " + day(paced.day())
                : capital(names(paced.ids()))
                        + (paced.ids().size() == 1 ? " goes in on " : " go in on ")
                        + day(paced.day());
        Sentence gap = Sentence.of(near + ", and additions lie " + days + " days apart", sources.gap());
        return paced.ids().isEmpty() || paced.room() >= load(id)
                ? Sentence.of(gap, ".")
                : Sentence.of(gap, "; that one has room for only ", grams(paced.room()), " more", sources.pace(), ".");
    }

    private Sentence after(Reason.ComesAfter after) {
        LocalDate day = after.day();
        return day == null
                ? Sentence.of(capital(name(after.id())) + " has to thrive here first, and has no day itself.")
                : Sentence.of(
                        capital(name(after.id())) + " has to live here for " + after.days()
                                + " days first, and goes in on " + day(day),
                        sources.after(),
                        ".");
    }

    private Sentence timid(String id, String other) {
        return boldness(id) > boldness(other)
                ? Sentence.of(capital(name(other)) + " is more timid and goes in first", sources.timid(), ".")
                : Sentence.of(
                        capital(name(other)) + " is bolder and is in the display already: it would not let it settle",
                        sources.timid(),
                        ".");
    }

    private Sentence prey(String id, String other) {
        boolean hunts = study.plan().request().preyFirst().stream()
                .anyMatch(pair -> pair.predator().equals(id) && pair.prey().equals(other));
        return hunts
                ? Sentence.of(
                        "It may eat " + name(other) + ", which has to know its holes before it comes",
                        sources.prey(),
                        ".")
                : Sentence.of(capital(name(other)) + " may eat it and is in the display already", sources.prey(), ".");
    }

    private Sentence noTank(Reason.NoTank none) {
        return study.household().boxes().isEmpty()
                ? Sentence.of(
                        "No quarantine tank serves " + study.household().plan().name() + ".")
                : Sentence.of(
                        "It weighs ",
                        grams(none.load()),
                        ", and no quarantine tank carries so much",
                        sources.capacity(),
                        ". Wish for fewer or smaller ones.");
    }

    private int boldness(String id) {
        return study.plan().request().wish(id).map(wish -> wish.temperament()).orElse(0);
    }

    private @Unit("kg") double load(String id) {
        return study.plan().request().wish(id).map(wish -> wish.load()).orElse(0.0);
    }

    private LocalDate today() {
        return study.household().today();
    }

    private String day(LocalDate date) {
        return DayWords.of(date, today());
    }

    private static Figure grams(@Unit("kg") double mass) {
        return Figure.exact(Measure.SMALL_MASS, mass);
    }

    private String names(List<String> ids) {
        List<String> names = ids.stream().map(this::name).toList();
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    /** An id's animals; of one that was refused by its line. */
    private String name(String id) {
        ArrivalStudy.Member member = study.members().get(id);
        if (member != null) {
            return member.animals().words();
        }
        return study.refused().stream()
                .filter(each -> each.id().equals(id))
                .map(each -> each.line().animals().words())
                .findFirst()
                .orElse(id);
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}

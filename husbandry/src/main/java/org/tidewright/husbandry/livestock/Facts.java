package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.species.SpeciesSource;
import org.tidewright.seawater.unit.Unit;

/** Pieces that the sentences of many rules are made of. */
final class Facts {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter OF_YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private Facts() {}

    /** The letter of what a fact of the catalogue rests on. */
    static Sentence.Part source(Situation seen, String what, SpeciesSource source) {
        return new Sentence.Part.Reference(seen.key(what, source));
    }

    /** The letter of a rule of thumb. */
    static Sentence.Part practice(Situation seen, String what, String detail) {
        return new Sentence.Part.Reference(seen.sources().key(what, Basis.COMMON_PRACTICE, detail));
    }

    static Figure length(@Unit("m") double length) {
        return Figure.exact(Measure.LENGTH, length);
    }

    static Figure volume(@Unit("m^3") double volume) {
        return Figure.exact(Measure.VOLUME, volume);
    }

    /** {@code 1 month}, {@code 6 months}. */
    static String months(@Unit("month") double months) {
        long whole = Math.round(months);
        return whole + (whole == 1 ? " month" : " months");
    }

    /** A day, with its year where that is not this one. */
    static String date(LocalDate day, LocalDate today) {
        return (day.getYear() == today.getYear() ? DATE : OF_YEAR).format(day);
    }

    /** At the beginning of a sentence. */
    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}

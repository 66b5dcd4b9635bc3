package org.tidewright.web.page;

import org.tidewright.husbandry.journal.Kind;

/** The kinds of lines as pages call them. */
final class KindWords {
    private KindWords() {}

    static String of(Kind kind) {
        return switch (kind) {
            case READING -> "readings";
            case METHOD_CHECK -> "checks of methods";
            case DOSE -> "doses";
            case WATER_CHANGE -> "water changes";
            case FEEDING -> "meals";
            case ANIMAL -> "animals";
            case WORK -> "work";
            case OBSERVATION -> "what was seen";
            case LEVER -> "levers";
            case ANIMAL_CHECK -> "checks of animals";
            case TREATMENT -> "treatments";
            case FALLOW -> "fallows";
        };
    }
}

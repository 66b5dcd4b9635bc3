package org.tidewright.husbandry.spreadsheet;

import java.time.LocalTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * Where and how a sheet tells the time.
 *
 * @param dateColumn of the date, perhaps with the time; counted from 1
 * @param carriedDown whether an empty date means the one above
 * @param timeColumn of the time of day; null where it stands with the date or nowhere
 * @param order of day, month and year; null while that is for the keeper to say
 * @param timeOfDay taken where none stands
 * @param zone of the keeper's clock, where a time tells no offset of its own
 */
public record Times(
        int dateColumn,
        boolean carriedDown,
        @Nullable Integer timeColumn,
        @Nullable DateOrder order,
        LocalTime timeOfDay,
        ZoneId zone) {

    Times with(DateOrder chosen) {
        return new Times(dateColumn, carriedDown, timeColumn, chosen, timeOfDay, zone);
    }
}

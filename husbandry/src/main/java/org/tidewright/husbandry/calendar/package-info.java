/**
 * Days as an iCalendar file (RFC 5545), for the calendar a keeper already has.
 *
 * <p>The only package that knows the calendar library. Pure: the moment of writing is given. To put other days into a calendar, give
 * them a class beside {@link org.tidewright.husbandry.calendar.ArrivalCalendar} that makes {@link
 * org.tidewright.husbandry.calendar.DayEntry}s, each with an id of its own that stays the same when its day moves.
 */
@NullMarked
package org.tidewright.husbandry.calendar;

import org.jspecify.annotations.NullMarked;

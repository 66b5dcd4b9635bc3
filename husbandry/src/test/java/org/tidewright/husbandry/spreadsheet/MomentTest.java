package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MomentTest {
    /** Date, time, order, and the time on a clock in London. Day 45292 is 1 January 2024: 366 days after 44926, 1 January 2023. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2023-06-05               |             | DMY | 2023-06-05T12:00+01:00
            2023/6/5                 | 14:35       | DMY | 2023-06-05T14:35+01:00
            2023.06.05.              | 14:35:20    | DMY | 2023-06-05T14:35:20+01:00
            20230605                 | 1435        | DMY | 2023-06-05T14:35+01:00
            2023-06-05T14:35:20.25Z  |             | DMY | 2023-06-05T14:35:20.250Z
            2023-06-05 14:35+02:00   |             | DMY | 2023-06-05T14:35+02:00
            2023-06-05 14:35:00 UTC  |             | DMY | 2023-06-05T14:35Z
            2023-06-05T14:35-0730    |             | DMY | 2023-06-05T14:35-07:30
            05/06/2023               |             | DMY | 2023-06-05T12:00+01:00
            05/06/2023               |             | MDY | 2023-05-06T12:00+01:00
            5-6-23                   |             | DMY | 2023-06-05T12:00+01:00
            05.06.23                 |             | YMD | 2005-06-23T12:00+01:00
            5.6.68                   |             | DMY | 2068-06-05T12:00+01:00
            5.6.69                   |             | DMY | 1969-06-05T12:00+01:00
            Mon 5/6/2023 2:35 pm     |             | DMY | 2023-06-05T14:35+01:00
            5 Jun 2023               | 2:35 PM     | YMD | 2023-06-05T14:35+01:00
            5th of June, 2023        | 12:10 AM    | YMD | 2023-06-05T00:10+01:00
            Jun 5, 2023              | 12:10 P.M.  | YMD | 2023-06-05T12:10+01:00
            Monday, June 5, 2023     | 2pm         | YMD | 2023-06-05T14:00+01:00
            5-Jun-23                 | 14h35       | YMD | 2023-06-05T14:35+01:00
            2023-Jun-05              |             | YMD | 2023-06-05T12:00+01:00
            5. Dez. 2023             |             | YMD | 2023-12-05T12:00Z
            5 Jun 2023               | 14h         | YMD | 2023-06-05T14:00+01:00
            5 juillet 2023           |             | YMD | 2023-07-05T12:00+01:00
            45292                    |             | YMD | 2024-01-01T12:00Z
            45292.75                 |             | YMD | 2024-01-01T18:00Z
            45292,25                 |             | YMD | 2024-01-01T06:00Z
            45292                    | 0.75        | YMD | 2024-01-01T18:00Z
            45292                    | 0.34375     | YMD | 2024-01-01T08:15Z
            45351                    |             | YMD | 2024-02-29T12:00Z
            29/02/2024               |             | DMY | 2024-02-29T12:00Z
            5/6/2023                 | 24:00       | DMY | 2023-06-06T00:00+01:00
            2023-06-05 00:00:00      | 08:15       | DMY | 2023-06-05T08:15+01:00
            2023-06-05               | 1899-12-30 08:15:00 | DMY | 2023-06-05T08:15+01:00
            26/03/2023               | 00:59       | DMY | 2023-03-26T00:59Z
            26/03/2023               | 02:00       | DMY | 2023-03-26T02:00+01:00
            29/10/2023               | 01:30       | DMY | 2023-10-29T01:30+01:00
            29/10/2023               | 02:00       | DMY | 2023-10-29T02:00Z
            """)
    void aTimeIsReadAsItIsMeant(String date, @Nullable String time, DateOrder order, String expected) throws BadCell {
        assertThat(moment(date, time, order).at()).hasToString(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            29/02/2023   |           | a day that exists: 2023 has no 29 February
            29/02/1900   |           | a year from 1950 to 2099
            31/04/2023   |           | a day that exists
            13/13/2023   |           | a day that exists
            00/05/2023   |           | a day that exists
            5/6/3023     |           | a year from 1950 to 2099
            5/6          |           | a date such as 2023-06-05
            June 2023    |           | a date such as 2023-06-05
            yesterday    |           | a date such as 2023-06-05
            5 Jui 2023   |           | a date such as 2023-06-05
            05/06/2023   | 25:00     | a time of day such as 14:35 or 2:35 PM
            05/06/2023   | 13:00 PM  | a time of day such as 14:35 or 2:35 PM
            05/06/2023   | 14:60     | a time of day such as 14:35 or 2:35 PM
            05/06/2023   | 14:35 EST | a time of day such as 14:35 or 2:35 PM
            05/06/2023   | 14:35+19:00 | a time of day such as 14:35 or 2:35 PM
            05/06/2023   | 9         | a time of day such as 14:35 or 2:35 PM
            05/06/2023   | 0.25      | a time of day such as 14:35 or 2:35 PM
            05/06/2023 8:00 | 9:00   | one time for a row
            26/03/2023   | 01:30     | a time before 01:00 or from 02:00 on, since clocks went forward that night
            """)
    void aTimeThatCannotBeIsRefusedWithTheReason(String date, @Nullable String time, String expected) {
        assertThatThrownBy(() -> moment(date, time, DateOrder.DMY))
                .isInstanceOfSatisfying(
                        BadCell.class, bad -> assertThat(bad.expected()).isEqualTo(expected));
    }

    @Test
    void onlyATimeThatTheClockShowedTwiceIsSaidToComeTwice() throws BadCell {
        assertThat(moment("29/10/2023", "00:59", DateOrder.DMY).comesTwice()).isFalse();
        assertThat(moment("29/10/2023", "01:00", DateOrder.DMY).comesTwice()).isTrue();
        assertThat(moment("29/10/2023", "02:00", DateOrder.DMY).comesTwice()).isFalse();
        assertThat(moment("2023-10-29T01:00Z", null, DateOrder.DMY).comesTwice())
                .isFalse();
    }

    private static Moment moment(String date, @Nullable String time, DateOrder order) throws BadCell {
        Times times = new Times(1, false, 2, order, LocalTime.NOON, ZoneId.of("Europe/London"));
        return Moment.of(date, time == null ? null : Moment.timeOfDay(time), times);
    }
}

package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.husbandry.spreadsheet.DateOrder.DMY;
import static org.tidewright.husbandry.spreadsheet.DateOrder.MDY;
import static org.tidewright.husbandry.spreadsheet.DateOrder.YMD;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What all cells together say of the order of dates and of the decimal sign. */
class EvidenceTest {
    @Test
    void oneDayAfterTheTwelfthDecidesAmongFew() {
        assertThat(order("05/06/2023", "13/06/2023")).contains(DMY);
        assertThat(order("05/06/2023", "06/13/2023")).contains(MDY);
        assertThat(order("2023-06-05", "2023-06-06")).contains(YMD);
    }

    @Test
    void whereNoDayIsAfterTheTwelfthNothingIsChosen() {
        assertThat(order("05/06/2023", "12/06/2023", "01/02/2023")).isEmpty();
        assertThat(order("5.6.2023", "6.6.2023")).isEmpty();
    }

    @Test
    void whereDatesContradictOneAnotherNothingIsChosen() {
        assertThat(order("13/06/2023", "06/13/2023")).isEmpty();
    }

    @Test
    void oneSlipInAHundredDatesDoesNotDecide() {
        Stream<String> year = dates(100, "d/M/uuuu");
        assertThat(order(Stream.concat(year, Stream.of("6/13/2023")).toArray(String[]::new)))
                .contains(DMY);
    }

    @Test
    void yearsOfTwoDigitsAreToldFromDaysByHowManyThereAre() {
        assertThat(order(dates(60, "d.M.uu").toArray(String[]::new))).contains(DMY);
        assertThat(order(dates(60, "M/d/uu").toArray(String[]::new))).contains(MDY);
        assertThat(order(dates(60, "uu-MM-dd").toArray(String[]::new))).contains(YMD);
        assertThat(order("21.06.23")).as("of a single date").isEmpty();
    }

    @Test
    void namedMonthsAndCountedDaysLeaveNothingOpen() {
        assertThat(order("5 Jun 2023", "45000", "2023-06-05")).contains(YMD);
    }

    /** Every sixth day from 1 February 2023 on. */
    private static Stream<String> dates(int count, String pattern) {
        DateTimeFormatter format = DateTimeFormatter.ofPattern(pattern);
        return IntStream.range(0, count)
                .mapToObj(i -> LocalDate.of(2023, 2, 1).plusDays(6L * i).format(format));
    }

    private static Optional<DateOrder> order(String... cells) {
        DateEvidence evidence = new DateEvidence();
        for (String cell : cells) {
            evidence.add(DateShape.of(cell).orElseThrow());
        }
        Guess<Optional<DateOrder>> guess = evidence.order();
        assertThat(guess.sure()).isEqualTo(guess.value().isPresent());
        return guess.value();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            8.1 420 1350        | ;  | POINT
            8,1 420 1350        | ;  | COMMA
            1.350,5             | ;  | COMMA
            1,350.5             | ,  | POINT
            1.350.000           | ;  | COMMA
            0,125               | ;  | COMMA
            0.125               | ;  | POINT
            420 1350            | ;  | POINT
            1.350 1.340         | ;  |
            1,350 1,340         | ,  |
            1.025 1.026         | ,  | POINT
            1.026 1.0255        | ;  | POINT
            8.1 8,2             | ;  |
            8.1 5/6/2023 a,b    | ;  | POINT
            """)
    void theSignIsThatOfAllNumbersTogetherOrIsAsked(String cells, char separator, DecimalSign expected) {
        DecimalEvidence evidence = new DecimalEvidence();
        for (String cell : cells.split(" ", -1)) {
            evidence.add(cell);
        }
        assertThat(evidence.guess(separator).value()).isEqualTo(Optional.ofNullable(expected));
    }

    @Test
    void oneCommaAmongAHundredPointsIsASlip() {
        DecimalEvidence evidence = new DecimalEvidence();
        for (int i = 0; i < 100; i++) {
            evidence.add("8." + i);
        }
        evidence.add("8,1");
        assertThat(evidence.guess(',').value()).contains(DecimalSign.POINT);
    }
}

package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellNumberTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            8.1         | POINT | 8.1     |
            8,1         | COMMA | 8.1     |
            1,350       | POINT | 1350    |
            1.350,25    | COMMA | 1350.25 |
            1'350.5     | POINT | 1350.5  |
            1\u00A0350  | POINT | 1350    |
            .5          | POINT | .5      |
            5.          | POINT | 5.      |
            -1.8        | POINT | -1.8    |
            −1.8        | POINT | -1.8    |
            +8          | POINT | 8       |
            1.2E-3      | POINT | 1.2E-3  |
            8.1 dKH     | POINT | 8.1     | dKH
            78°F        | POINT | 78      | °F
            0,05 mg/l   | COMMA | 0.05    | mg/l
            """)
    void aNumberIsReadWithItsUnit(String cell, DecimalSign decimal, String digits, String unit) throws BadCell {
        assertThat(CellNumber.read(cell, decimal)).isEqualTo(new CellNumber(digits, unit == null ? "" : unit));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "8,1", "1,35", "1,3500", "0,125", "01,350", "abc", "<0.02", ">50", "~8", "nd", "8.1.2", "1e999", "8..1"
            })
    void whatIsNoNumberWithAPointIsRefused(String cell) {
        assertThatThrownBy(() -> CellNumber.read(cell, DecimalSign.POINT)).isInstanceOf(BadCell.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "–", "N/A", "nan", "#N/A", "null"})
    void whatKeepersWriteForNothingIsNothing(String cell) {
        assertThat(CellNumber.isNothing(cell)).isTrue();
    }
}

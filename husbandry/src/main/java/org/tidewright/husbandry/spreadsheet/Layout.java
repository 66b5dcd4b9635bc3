package org.tidewright.husbandry.spreadsheet;

import java.nio.charset.Charset;

/**
 * How a file is laid out.
 *
 * @param headerLine line of the header, or of its first row; that of the data where there is none
 * @param dataLine first line of the data; the lines above the header are passed over
 */
public record Layout(Charset charset, char separator, int headerLine, int dataLine) {
    /** Whether any line names the columns. */
    public boolean hasHeader() {
        return headerLine < dataLine;
    }
}

package org.tidewright.husbandry.spreadsheet;

import java.io.IOException;
import java.io.InputStream;

/** The bytes of a spreadsheet saved as CSV, which are read more than once. */
public interface SheetSource {
    InputStream open() throws IOException;
}

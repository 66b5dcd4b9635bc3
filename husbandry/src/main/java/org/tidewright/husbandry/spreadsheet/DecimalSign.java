package org.tidewright.husbandry.spreadsheet;

/** What stands before the decimals; the other of the two may stand between thousands. */
public enum DecimalSign {
    POINT('.', ','),
    COMMA(',', '.');

    private final char sign;
    private final char thousands;

    DecimalSign(char sign, char thousands) {
        this.sign = sign;
        this.thousands = thousands;
    }

    char sign() {
        return sign;
    }

    char thousands() {
        return thousands;
    }
}

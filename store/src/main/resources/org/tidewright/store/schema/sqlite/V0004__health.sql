-- How animals were, what they were treated with, and displays that are kept without fish.

CREATE TABLE animal_check (
  line_no            INTEGER PRIMARY KEY REFERENCES line (line_no),
  animal             TEXT CHECK (animal <> ''), -- all where null
  ate                TEXT NOT NULL CHECK (ate IN ('all', 'some', 'none', 'not_fed')),
  breaths_per_minute INTEGER CHECK (breaths_per_minute BETWEEN 0 AND 400)
) STRICT;

-- What was seen of illness: none or more rows for a check.
CREATE TABLE animal_sign (
  line_no INTEGER NOT NULL REFERENCES animal_check (line_no),
  sign    TEXT    NOT NULL,
  PRIMARY KEY (line_no, sign)
) STRICT, WITHOUT ROWID;

CREATE TABLE treatment (
  line_no   INTEGER PRIMARY KEY REFERENCES line (line_no),
  treatment TEXT NOT NULL CHECK (treatment <> ''),
  word      TEXT NOT NULL CHECK (word IN ('label', 'veterinarian')), -- on whose it was given
  water_m3  REAL CHECK (water_m3 > 0), -- that it went into
  said      TEXT CHECK (said <> '')
) STRICT;

CREATE TABLE fallow (
  line_no  INTEGER PRIMARY KEY REFERENCES line (line_no),
  parasite TEXT NOT NULL,
  turn     TEXT NOT NULL CHECK (turn IN ('began', 'broken', 'ended'))
) STRICT;

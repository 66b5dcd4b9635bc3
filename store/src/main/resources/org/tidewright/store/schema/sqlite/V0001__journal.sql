-- The journals of all systems. A row of "line" is one revision of a line; the row with its event has the same number and
-- lies in the table named like its kind. Rows are never changed, but for "stands", and never taken out.

CREATE TABLE line (
  line_no     INTEGER PRIMARY KEY, -- in the order of writing, over all systems
  system      TEXT    NOT NULL CHECK (system <> ''),
  id          TEXT    NOT NULL CHECK (length(id) = 36),
  revision    INTEGER NOT NULL CHECK (revision >= 1),
  first_no    INTEGER NOT NULL REFERENCES line (line_no), -- its first revision
  at_ms       INTEGER NOT NULL, -- since 1970-01-01T00:00Z
  at_ns       INTEGER NOT NULL CHECK (at_ns BETWEEN 0 AND 999999), -- beyond the millisecond
  at_offset_s INTEGER NOT NULL CHECK (at_offset_s BETWEEN -64800 AND 64800), -- of the writer's clock from UTC
  kind        TEXT    NOT NULL,
  remark      TEXT    NOT NULL,
  struck      INTEGER NOT NULL CHECK (struck IN (0, 1)),
  stands      INTEGER NOT NULL CHECK (stands IN (0, 1)), -- the newest revision, and not struck
  written_ms  INTEGER NOT NULL,
  written_ns  INTEGER NOT NULL CHECK (written_ns BETWEEN 0 AND 999999),
  UNIQUE (system, id, revision),
  CHECK (struck = 0 OR stands = 0),
  CHECK ((revision = 1) = (first_no = line_no))
) STRICT;

CREATE INDEX line_standing ON line (system, kind, at_ms, at_ns) WHERE stands = 1;

CREATE TABLE reading (
  line_no  INTEGER PRIMARY KEY REFERENCES line (line_no),
  quantity TEXT NOT NULL,
  value    REAL NOT NULL, -- as it was written
  unit     TEXT NOT NULL, -- what it was written in
  method   TEXT
) STRICT;

CREATE TABLE method_check (
  line_no        INTEGER PRIMARY KEY REFERENCES line (line_no),
  quantity       TEXT NOT NULL,
  method         TEXT NOT NULL,
  unit           TEXT NOT NULL, -- of the three numbers
  shown          REAL NOT NULL,
  standard       REAL NOT NULL,
  standard_error REAL NOT NULL CHECK (standard_error >= 0)
) STRICT;

CREATE TABLE dose (
  line_no      INTEGER PRIMARY KEY REFERENCES line (line_no),
  solution     TEXT NOT NULL CHECK (solution <> ''),
  salt         TEXT,
  salt_mass_kg REAL CHECK (salt_mass_kg > 0),
  volume_m3    REAL CHECK (volume_m3 > 0),
  CHECK (salt_mass_kg IS NOT NULL OR volume_m3 IS NOT NULL)
) STRICT;

CREATE TABLE water_change (
  line_no   INTEGER PRIMARY KEY REFERENCES line (line_no),
  volume_m3 REAL NOT NULL CHECK (volume_m3 > 0)
) STRICT;

-- What is known of the new water of a change.
CREATE TABLE new_water (
  line_no  INTEGER NOT NULL REFERENCES water_change (line_no),
  quantity TEXT    NOT NULL,
  value    REAL    NOT NULL,
  unit     TEXT    NOT NULL, -- the quantity's coherent one
  PRIMARY KEY (line_no, quantity)
) STRICT, WITHOUT ROWID;

CREATE TABLE feeding (
  line_no INTEGER PRIMARY KEY REFERENCES line (line_no),
  food    TEXT NOT NULL CHECK (food <> ''),
  mass_kg REAL NOT NULL CHECK (mass_kg > 0)
) STRICT;

CREATE TABLE animal (
  line_no    INTEGER PRIMARY KEY REFERENCES line (line_no),
  animal     TEXT    NOT NULL CHECK (animal <> ''),
  head_count INTEGER NOT NULL CHECK (head_count > 0),
  move       TEXT    NOT NULL CHECK (move IN ('arrived', 'left', 'died')),
  length_m   REAL CHECK (length_m > 0) -- of one
) STRICT;

CREATE TABLE work (
  line_no INTEGER PRIMARY KEY REFERENCES line (line_no),
  work    TEXT NOT NULL CHECK (work <> ''),
  took_s  INTEGER CHECK (took_s >= 0),
  took_ns INTEGER CHECK (took_ns BETWEEN 0 AND 999999999), -- beyond the second
  CHECK ((took_s IS NULL) = (took_ns IS NULL))
) STRICT;

CREATE TABLE observation (
  line_no INTEGER PRIMARY KEY REFERENCES line (line_no),
  seen    TEXT NOT NULL,
  photo   TEXT, -- name of a photo of the same system; a restored journal may be here before its photos are
  CHECK (seen <> '' OR photo IS NOT NULL)
) STRICT;

CREATE TABLE lever (
  line_no      INTEGER PRIMARY KEY REFERENCES line (line_no),
  lever        TEXT NOT NULL CHECK (lever <> ''),
  unit         TEXT NOT NULL, -- of the two numbers
  before_value REAL,
  after_value  REAL NOT NULL
) STRICT;

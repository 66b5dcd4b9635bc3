-- What probes say by themselves: each value, and what there is of them in each hour and each day.

CREATE TABLE probe (
  probe_no INTEGER PRIMARY KEY,
  system   TEXT NOT NULL CHECK (system <> ''),
  quantity TEXT NOT NULL,
  method   TEXT NOT NULL,
  place    TEXT NOT NULL,
  unit     TEXT NOT NULL, -- of its values, the quantity's coherent one
  UNIQUE (system, quantity, method, place)
) STRICT;

CREATE TABLE probe_value (
  probe_no INTEGER NOT NULL REFERENCES probe (probe_no),
  at_ms    INTEGER NOT NULL, -- since 1970-01-01T00:00Z
  value    REAL    NOT NULL,
  PRIMARY KEY (probe_no, at_ms)
) STRICT, WITHOUT ROWID;

-- Computed anew from the values whenever one of theirs comes in or changes.
CREATE TABLE probe_summary (
  probe_no    INTEGER NOT NULL REFERENCES probe (probe_no),
  length_s    INTEGER NOT NULL CHECK (length_s IN (3600, 86400)),
  from_ms     INTEGER NOT NULL CHECK (from_ms % (length_s * 1000) = 0), -- hours and days of UTC
  value_count INTEGER NOT NULL CHECK (value_count > 0),
  least       REAL    NOT NULL,
  sum         REAL    NOT NULL,
  most        REAL    NOT NULL,
  PRIMARY KEY (probe_no, length_s, from_ms),
  CHECK (least <= most)
) STRICT, WITHOUT ROWID;

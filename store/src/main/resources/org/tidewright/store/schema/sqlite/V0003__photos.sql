-- Pictures that observations refer to, named by the SHA-256 of their bytes in small hexadecimal digits.

CREATE TABLE photo (
  system     TEXT NOT NULL CHECK (system <> ''),
  name       TEXT NOT NULL CHECK (length(name) = 64),
  media_type TEXT NOT NULL CHECK (media_type IN ('image/jpeg', 'image/png', 'image/webp')),
  bytes      BLOB NOT NULL,
  PRIMARY KEY (system, name)
) STRICT;

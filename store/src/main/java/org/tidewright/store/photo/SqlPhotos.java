package org.tidewright.store.photo;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.PictureKind;
import org.tidewright.store.database.Database;

/** Pictures in a database, under the SHA-256 of their bytes. */
public final class SqlPhotos implements Photos {
    private final Database database;

    public SqlPhotos(Database database) {
        this.database = database;
    }

    /**
     * Keeps a picture; on disk when it returns. The same bytes are kept once.
     *
     * @throws IllegalArgumentException where it is too large, or is not what it is called
     */
    @Override
    public String keep(String system, Photo photo) {
        mustBeKeepable(photo);
        String name = name(photo.bytes());
        database.write(sql -> sql.change(
                "INSERT INTO photo (system, name, media_type, bytes) VALUES (?, ?, ?, ?)"
                        + " ON CONFLICT (system, name) DO NOTHING",
                system,
                name,
                photo.mediaType(),
                photo.bytes()));
        return name;
    }

    private static void mustBeKeepable(Photo photo) {
        if (photo.bytes().length > LARGEST_BYTES) {
            throw new IllegalArgumentException("the photo has " + photo.bytes().length + " bytes, " + LARGEST_BYTES
                    + " are the most: make it smaller");
        }
        String found = PictureKind.of(photo.bytes()).map(PictureKind::mediaType).orElse("none of them");
        if (!found.equals(photo.mediaType())) {
            throw new IllegalArgumentException("the photo is called " + photo.mediaType() + " and is " + found
                    + ", by its first bytes; kept are " + PictureKind.allMediaTypes());
        }
    }

    @Override
    public Optional<Photo> find(String system, String name) {
        return database.read(sql -> sql.first(
                "SELECT media_type, bytes FROM photo WHERE system = ? AND name = ?",
                row -> new Photo(row.text("media_type"), row.bytes("bytes")),
                system,
                name));
    }

    private static String name(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            // Every Java platform has it: java.security.MessageDigest.
            throw new IllegalStateException(impossible);
        }
    }
}

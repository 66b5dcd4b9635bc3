package org.tidewright.web.desk;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.tidewright.husbandry.journal.Photos;

/** Pictures in memory, so that pages can be tested without a store. */
final class HandMadePhotos implements Photos {
    private final Map<String, Photo> kept = new ConcurrentHashMap<>();

    /** 64 hexadecimal digits, as the store names them. */
    @Override
    public String keep(String system, Photo photo) {
        String half = UUID.nameUUIDFromBytes(photo.bytes()).toString().replace("-", "");
        kept.put(system + " " + half + half, photo);
        return half + half;
    }

    @Override
    public Optional<Photo> find(String system, String name) {
        return Optional.ofNullable(kept.get(system + " " + name));
    }
}

package org.tidewright.husbandry.journal;

import java.util.Optional;

/** The pictures that observations refer to. */
public interface Photos {
    /** Most bytes of one picture: a phone's are 2 to 8 MB (common practice). */
    int LARGEST_BYTES = 20_000_000;

    /** A picture and what kind of file it is: {@code image/jpeg}. */
    record Photo(String mediaType, byte[] bytes) {}

    /**
     * Keeps a picture; on disk when it returns. The same bytes are kept once.
     *
     * @return the name it is found by
     */
    String keep(String system, Photo photo);

    Optional<Photo> find(String system, String name);
}

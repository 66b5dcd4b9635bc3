package org.tidewright.store.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.Photos.Photo;

/** What whoever keeps photos must do, whatever it keeps them in. */
abstract class PhotosContract {
    private static final String REEF = "harbour room";
    private static final byte[] JPEG = HexFormat.of().parseHex("ffd8ffe000104a46494600010100");
    private static final byte[] PNG = HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452");
    private static final byte[] WEBP = HexFormat.of().parseHex("524946460a0d00ff57454250565038");

    private Photos photos;

    /** Photos that hold nothing yet. */
    abstract Photos openEmpty();

    @BeforeEach
    void open() {
        photos = openEmpty();
    }

    @Test
    void eachKindOfPictureComesBackAsItWas() {
        for (Photo photo :
                List.of(new Photo("image/jpeg", JPEG), new Photo("image/png", PNG), new Photo("image/webp", WEBP))) {
            Photo found = photos.find(REEF, photos.keep(REEF, photo)).orElseThrow();
            assertThat(found.mediaType()).isEqualTo(photo.mediaType());
            assertThat(found.bytes()).isEqualTo(photo.bytes());
        }
    }

    @Test
    void aPictureIsNamedByItsSha256() {
        // sha256sum (GNU coreutils 9.1) of the bytes above.
        assertThat(photos.keep(REEF, new Photo("image/jpeg", JPEG)))
                .isEqualTo("aeee9356ffdd7745f591ca7b3a1ddd1724ed4b8e2d426b50d4cfd1bace3943f4");
    }

    @Test
    void theSameBytesAreKeptOnceUnderOneName() {
        String name = photos.keep(REEF, new Photo("image/jpeg", JPEG));
        assertThat(photos.keep(REEF, new Photo("image/jpeg", JPEG.clone()))).isEqualTo(name);
        assertThat(photos.keep(REEF, new Photo("image/png", PNG))).isNotEqualTo(name);
    }

    @Test
    void systemsDoNotSeeEachOthersPictures() {
        String name = photos.keep(REEF, new Photo("image/jpeg", JPEG));
        assertThat(photos.find("nano", name)).isEmpty();
        assertThat(photos.keep("nano", new Photo("image/jpeg", JPEG))).isEqualTo(name);
        assertThat(photos.find("nano", name)).isPresent();
    }

    @Test
    void aNameThatIsNoneFindsNothing() {
        assertThat(photos.find(REEF, "0".repeat(64))).isEmpty();
        assertThat(photos.find(REEF, "")).isEmpty();
        assertThat(photos.find(REEF, "' OR 1=1 --")).isEmpty();
    }

    @Test
    void twentyMegabytesAreKeptAndNotAByteMore() {
        byte[] largest = Arrays.copyOf(JPEG, 20_000_000);
        assertThat(photos.find(REEF, photos.keep(REEF, new Photo("image/jpeg", largest)))
                        .orElseThrow()
                        .bytes())
                .isEqualTo(largest);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> photos.keep(REEF, new Photo("image/jpeg", Arrays.copyOf(JPEG, 20_000_001))))
                .withMessage("the photo has 20000001 bytes, 20000000 are the most: make it smaller");
    }

    @Test
    void whatIsNotThePictureItIsCalledIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> photos.keep(REEF, new Photo("image/jpeg", PNG)))
                .withMessageContaining("called image/jpeg and is image/png");
        byte[] page = "<html><script>alert(1)</script></html>".getBytes(StandardCharsets.UTF_8);
        for (Photo none : List.of(
                new Photo("image/png", page),
                new Photo("text/html", page),
                new Photo("image/svg+xml", page),
                new Photo("image/jpeg", new byte[0]),
                new Photo("image/png", Arrays.copyOf(PNG, 7)),
                new Photo("image/webp", Arrays.copyOf(WEBP, 11)))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> photos.keep(REEF, none))
                    .withMessageContaining("is none of them");
        }
        assertThatIllegalArgumentException().isThrownBy(() -> photos.keep(REEF, new Photo("IMAGE/JPEG", JPEG)));
    }
}

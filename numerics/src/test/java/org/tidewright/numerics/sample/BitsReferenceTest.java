package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BitsReferenceTest {
    @Test
    void namesHashToTheVectorsPublishedForTheHash() {
        // FNV-1a of 64 bits: test vectors of its authors (Fowler, Noll, Vo and Eastlake, The FNV Non-Cryptographic
        // Hash).
        assertThat(Bits.hash("")).isEqualTo(0xcbf29ce484222325L);
        assertThat(Bits.hash("a")).isEqualTo(0xaf63dc4c8601ec8cL);
        assertThat(Bits.hash("foobar")).isEqualTo(0x85944171f73967e8L);
    }

    @Test
    void theSequenceIsThatOfTheJdksSplittableRandom() {
        for (long seed : new long[] {0, 1, 1234567, -5, Long.MIN_VALUE}) {
            SplittableRandom jdk = new SplittableRandom(seed);
            for (int i = 0; i < 20; i++) {
                assertThat(Bits.sequence(seed, i)).isEqualTo(jdk.nextLong());
            }
        }
    }

    @Test
    void fractionsNeverReachZeroOrOne() {
        for (int count : new int[] {28, 52}) {
            assertThat(Bits.fraction(0, count)).isPositive();
            assertThat(Bits.fraction(-1, count)).isLessThan(1);
            assertThat(Bits.fraction(0, count)).isEqualTo(1 - Bits.fraction(-1, count));
        }
    }
}

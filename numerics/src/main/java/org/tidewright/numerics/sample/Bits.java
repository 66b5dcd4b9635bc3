package org.tidewright.numerics.sample;

import java.nio.charset.StandardCharsets;

/**
 * Random bits as a pure function of what they are for.
 *
 * <p>The finaliser of SplitMix64 (Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators, OOPSLA,
 * with Stafford's variant 13) over a name's FNV-1a hash of 64 bits (Fowler, Noll and Vo): neither depends on the JDK.
 */
final class Bits {
    /** The odd integer nearest 2^64 divided by the golden ratio. */
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;

    private static final long FNV_OFFSET = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;

    private Bits() {}

    /** Bits for one purpose: unlike seeds, draws or names give unrelated bits. */
    static long of(long seed, long draw, String name) {
        return mix(mix(mix(seed + GOLDEN) + (draw + 1) * GOLDEN) ^ hash(name));
    }

    /** The n-th number, from 0, of the sequence SplitMix64 gives from a seed. */
    static long sequence(long seed, long n) {
        return mix(seed + (n + 1) * GOLDEN);
    }

    static long mix(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    static long hash(String name) {
        long hash = FNV_OFFSET;
        for (byte each : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (each & 0xff)) * FNV_PRIME;
        }
        return hash;
    }

    /** The top bits as a fraction: one of the 2^bits midpoints in (0, 1), so never 0 or 1; at most 52 bits. */
    static double fraction(long bits, int count) {
        return ((bits >>> (64 - count)) + 0.5) / (1L << count);
    }
}

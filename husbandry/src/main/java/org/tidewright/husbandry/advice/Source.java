package org.tidewright.husbandry.advice;

import org.tidewright.plan.source.Basis;

/**
 * Where a number comes from.
 *
 * @param key letter it is referred to by on its page
 * @param what the number or law, in words
 * @param basis kind of ground it stands on
 * @param detail the publication, or what the practice is; may be empty
 */
public record Source(String key, String what, Basis basis, String detail) {}

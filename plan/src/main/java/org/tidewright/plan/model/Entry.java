package org.tidewright.plan.model;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What one key of the plan means. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Entry {
    /** Meaning, for the keeper. */
    String value();

    /** For an amount, the coherent unit it is computed in, as in {@link org.tidewright.seawater.unit.Unit}. */
    String unit() default "";

    /** Least accepted value, in {@link #unit()}; for a list, its least length. */
    double least() default Double.NEGATIVE_INFINITY;

    /** Greatest accepted value, in {@link #unit()}; for a list, its greatest length. */
    double most() default Double.POSITIVE_INFINITY;
}

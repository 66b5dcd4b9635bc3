package org.tidewright.seawater.unit;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The unit of a number. Every public {@code double} of the computing modules carries one, and a test reads the sources
 * to see that it does.
 *
 * <p>Written in plain text with {@code *}, {@code /}, {@code ^} and parentheses: {@code "kg/m^3"},
 * {@code "J/(kg*K)"}, {@code "m^3/s"}; {@code "1"} for a number without a unit. Temperatures are {@code "degC"} on the
 * scale ITS-90 unless the text says otherwise, {@code "K"} for absolute temperature and for differences. {@code "*"} for a
 * number whose unit stands beside it as data: a parameter's value, a stock's amount.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({
    ElementType.METHOD,
    ElementType.PARAMETER,
    ElementType.FIELD,
    ElementType.RECORD_COMPONENT,
    ElementType.LOCAL_VARIABLE,
    ElementType.TYPE_USE
})
public @interface Unit {
    String value();
}

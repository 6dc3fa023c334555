// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The least and the greatest value that a component may have, both allowed. It holds for a number, for an optional number
 * where there is one, and for each entry of a list of numbers. Infinity and "not a number" are never allowed.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Between {

    /** Returns the least value. */
    double least() default -Double.MAX_VALUE;

    /** Returns the greatest value. */
    double most() default Double.MAX_VALUE;
}

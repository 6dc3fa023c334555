// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** As {@link Between}, but the lower limit itself is not allowed. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Above {

    /** Returns the value that the component must exceed. */
    double floor();

    /** Returns the greatest value. */
    double most() default Double.MAX_VALUE;
}

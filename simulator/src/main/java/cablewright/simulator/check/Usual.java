// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The values of a number that are met in practice, over which a slider runs. They are common practice, no source. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Usual {

    /** Returns the value at the slider's low end. */
    double from();

    /** Returns the value at its high end. */
    double to();

    /** Returns whether equal steps of the slider are equal factors. */
    boolean byFactors() default false;
}

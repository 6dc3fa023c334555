// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A text on one line, without control characters, and not blank unless that is allowed. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Text {

    /** Most characters of a title, a label or a name. */
    int LINE = 200;

    /** Returns how few characters it may have; 0 allows a blank one. */
    int least() default 1;

    /** Returns how many characters it may have. */
    int most() default LINE;
}

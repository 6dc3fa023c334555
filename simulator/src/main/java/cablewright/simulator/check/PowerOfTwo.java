// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** As {@link Between}, but only powers of two are allowed. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface PowerOfTwo {

    /** Returns the least value. */
    int least();

    /** Returns the greatest value. */
    int most();
}

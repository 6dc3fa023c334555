// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** How many entries a list may have. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Entries {

    /** Returns the least number of entries. */
    int least() default 0;

    /** Returns the greatest number of entries. */
    int most() default Integer.MAX_VALUE;

    /** Returns whether no two entries may be equal. */
    boolean distinct() default false;
}

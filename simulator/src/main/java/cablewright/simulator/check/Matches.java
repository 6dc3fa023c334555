// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A text of a given form. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Matches {

    /** Returns the regular expression that all of the text must match. */
    String pattern();

    /** Returns what is allowed, in words. */
    String words();
}

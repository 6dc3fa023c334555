// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A text of one or more lines separated by line feeds, not blank and without other control characters but tabs. Files hold it as a
 * list of lines, so that changes can be read line by line.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Lines {

    /** Most characters of a text of several paragraphs. */
    int PAGE = 20_000;

    /** Returns how many characters it may have. */
    int most() default PAGE;
}

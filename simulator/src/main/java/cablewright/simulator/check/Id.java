// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A name within a file: 1 to 40 letters, digits, hyphens or underscores, beginning with a letter or digit. */
@Matches(
        pattern = "[A-Za-z0-9][A-Za-z0-9_-]{0,39}",
        words = "1 to 40 letters, digits, '-' or '_' that begin with a letter or digit")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.ANNOTATION_TYPE})
public @interface Id {}

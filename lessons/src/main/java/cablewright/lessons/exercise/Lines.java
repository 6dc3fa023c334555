// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a text of several lines (Markdown). Files hold it as a list of lines, so that people can read and compare it. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Lines {}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.simulator.check.Matches;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Bytes in lines of Base64 (RFC 4648). */
@Matches(pattern = "[A-Za-z0-9+/]+={0,2}", words = "a line of Base64")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Base64Lines {}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import cablewright.simulator.check.Above;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A length of a stretch of a cable [m]. */
@Above(floor = 0, most = Cable.MOST_METRES)
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface LengthOnCable {}

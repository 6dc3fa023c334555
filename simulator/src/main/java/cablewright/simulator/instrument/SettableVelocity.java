// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.instrument;

import cablewright.simulator.check.Between;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A velocity of propagation that can be set, over the speed of light. */
@Between(least = 0.05, most = 1)
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface SettableVelocity {}

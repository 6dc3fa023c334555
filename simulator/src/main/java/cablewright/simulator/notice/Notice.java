// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.notice;

import java.util.Objects;

/**
 * A remark that travels beside a result: the result is still given, but a model was used near or outside the range
 * where it holds. Notices are shown, never swallowed.
 *
 * @param kind what the remark is about; it fixes the unit of the two numbers
 * @param value the number found, in the unit that {@code kind} states
 * @param limit the number up to (or from) which the model holds, in the same unit
 */
public record Notice(NoticeKind kind, double value, double limit) {

    public Notice {
        Objects.requireNonNull(kind, "kind");
    }
}

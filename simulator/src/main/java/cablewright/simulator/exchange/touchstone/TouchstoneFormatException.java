// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import cablewright.simulator.exchange.ExchangeFormatException;

/** Says that a Touchstone file can't be read: in which file and line, what was found and what is allowed there. */
public final class TouchstoneFormatException extends ExchangeFormatException {

    private static final long serialVersionUID = 1L;

    TouchstoneFormatException(String file, int line, String what, String value, String allowed) {
        super(file, line, what, value, allowed);
    }
}

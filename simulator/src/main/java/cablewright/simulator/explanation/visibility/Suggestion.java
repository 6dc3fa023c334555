// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;

/**
 * A setting at which an event shows better.
 *
 * @param eventId the event
 * @param settings what to set
 * @param end the end to test from
 * @param visibility how the event shows there: clear, or marginal where nothing that was tried makes it clear
 */
public record Suggestion(String eventId, Settings settings, LineEnd end, Visibility visibility) {}

// SPDX-License-Identifier: Apache-2.0
/**
 * Joins a cable to an instrument: the one place where a simulated trace is taken.
 *
 * <p>It stands after {@code instrument}, which must not know the cable: a response may also come from a measured sweep or from
 * a sealed paper.
 */
package cablewright.simulator.measurement;

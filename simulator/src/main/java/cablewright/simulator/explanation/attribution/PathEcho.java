// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.wave.Waveform;

/**
 * A path and what it brings to the port.
 *
 * @param path the path
 * @param waveform its part of what came back, as the receiver shows it [V]
 */
record PathEcho(WavePath path, Waveform waveform) {}

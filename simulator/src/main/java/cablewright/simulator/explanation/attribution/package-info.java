/**
 * Which event caused each bump of a trace: wave paths through the scattering tree, matched to the extrema that stand out of the noise.
 *
 * <p>Decisions: {@code PathFinder} finds paths best first, by a bound at 48 frequencies; paths that meet the same places in another
 * order, forward or backward, are one. <b>A bump is known by how far it stands out of its sides</b>, not by its value, so the slow tail
 * on which it rides has no share in it. It must differ from its neighbours by more than noise alone would in one of a thousand traces
 * ({@code NoiseAveraging}); in 300 seeded traces of noise the test allows two.
 */
package cablewright.simulator.explanation.attribution;

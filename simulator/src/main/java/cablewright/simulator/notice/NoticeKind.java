// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.notice;

/** The kinds of remark, each with the meaning and unit of its two numbers. */
public enum NoticeKind {
    /**
     * TEM alone is no longer the truth: the top frequency (value, Hz) lies above the cutoff of the first higher mode of
     * the coax, TE11 (limit, Hz).
     */
    HIGHER_MODES,
    /**
     * A pair radiates: the top frequency (value, Hz) lies above the one whose wavelength is ten times the spacing
     * (limit, Hz).
     */
    PAIR_RADIATES,
    /**
     * Field leaks through the shield: its wall (value, m) is thinner than the skin depth at the top frequency (limit,
     * m).
     */
    THIN_SHIELD,
    /** A fit is carried on beyond its data: top frequency (value, Hz), last point of the data sheet (limit, Hz). */
    ABOVE_FITTED_RANGE,
    /** A fit misses its data: relative rms residual (value), residual of a good fit (limit). */
    POOR_FIT,
    /**
     * Physical conditions act on an equivalent geometry, not on the true one: outer diameter or spacing taken (value,
     * m); there is no limit (limit, 0).
     */
    EQUIVALENT_GEOMETRY,
    /**
     * Current crowds so strongly on one side of a conductor that the loss between DC and full skin effect is a few per
     * cent off: skin-effect factor of crowding (value), factor up to which it holds better (limit).
     */
    STRONG_CROWDING,
    /**
     * A film of water around an off-centre core is weighed as if concentric: offset of the axes (value, m), none
     * (limit, 0).
     */
    FILM_ON_OFF_CENTRE_CORE,
    /** A bend is tighter than the cable bears without folding: its radius (value, m), the least radius (limit, m). */
    BENT_TOO_TIGHTLY
}

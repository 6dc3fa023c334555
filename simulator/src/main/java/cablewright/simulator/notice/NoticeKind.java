package cablewright.simulator.notice;

/** The kinds of remark, each with the meaning and unit of its two numbers. */
public enum NoticeKind {
    /** The top frequency (value, Hz) reaches the first higher mode of the coax, TE11 (limit, Hz): TEM alone is no longer the truth. */
    HIGHER_MODES,
    /** The spacing of a pair is not small against the wavelength: top frequency (value, Hz), frequency at which it is a tenth (limit, Hz). */
    PAIR_RADIATES,
    /** The shield is thinner than the skin depth at the top frequency: wall (value, m), skin depth there (limit, m); field leaks through it. */
    THIN_SHIELD,
    /** The top frequency (value, Hz) lies above the last point of the data sheet (limit, Hz): the fit is carried on beyond its data. */
    ABOVE_FITTED_RANGE,
    /** A data sheet's fit misses its points: relative rms residual (value), what counts as a good fit (limit). */
    POOR_FIT,
    /** Physical conditions are done to an equivalent geometry, not to the true one: outer diameter assumed (value, m), no limit (limit, NaN). */
    EQUIVALENT_GEOMETRY,
    /** A water model is used outside the temperatures it was made for: temperature (value, degrees Celsius), nearest bound (limit, degrees Celsius). */
    WATER_TEMPERATURE,
    /** The core is so far off centre that surface currents crowd on a strip: eccentricity (value), bound (limit); the loss is the skin-effect limit. */
    EXTREME_ECCENTRICITY,
    /** A layered water film on an off-centre core is weighed as if concentric: eccentricity (value), bound (limit). */
    FILM_ON_OFF_CENTRE_CORE
}

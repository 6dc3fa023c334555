/**
 * Which module and package may know which, and the guide's examples applied to the sources.
 *
 * <p>Decisions: <b>ArchUnit, not {@code module-info}</b>: tests of the windows run on the class path with Monocle, and modules would ask
 * for add-exports in every run. The boundary tests first assert that they found every class. <b>No {@code @Nullable}</b>:
 * {@code Optional} and {@code OptionalDouble} in records; constructors reject null in words.
 */
package cablewright.architecture;

/**
 * Arithmetic on split arrays, real and imaginary parts apart, in short loops. The only place where complex arithmetic is
 * written out by hand.
 */
package cablewright.simulator.kernel;

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

/**
 * One method for each kind of load.
 *
 * @param <T> what each method returns
 */
public interface LoadVisitor<T> {

    /** Visits an open. @param load the load @return the visitor's answer */
    T open(Load.Open load);

    /** Visits a contact. @param load the load @return the visitor's answer */
    T shorted(Load.Short load);

    /** Visits a lumped load. @param load the load @return the visitor's answer */
    T part(Load.Part load);

    /** Visits a line without end. @param load the load @return the visitor's answer */
    T endless(Load.Endless load);
}

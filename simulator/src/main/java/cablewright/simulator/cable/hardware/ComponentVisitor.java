// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

/**
 * One method for each kind of component in the line, so that a new one breaks the build until all who treat them treat it.
 *
 * @param <T> what each method returns
 */
public interface ComponentVisitor<T> {

    /** Visits a good splice. @param event the event @return the visitor's answer */
    T splice(Splice event);

    /** Visits a connector. @param event the event @return the visitor's answer */
    T connector(Connector event);

    /** Visits a corroded joint. @param event the event @return the visitor's answer */
    T corrodedJoint(CorrodedJoint event);

    /** Visits a directional tap. @param event the event @return the visitor's answer */
    T tap(Tap event);

    /** Visits a splitter. @param event the event @return the visitor's answer */
    T splitter(Splitter event);

    /** Visits a housing. @param event the event @return the visitor's answer */
    T housing(Housing event);

    /** Visits a bridged tap. @param event the event @return the visitor's answer */
    T bridgedTap(BridgedTap event);

    /** Visits a load coil. @param event the event @return the visitor's answer */
    T loadCoil(LoadCoil event);

    /** Visits a build-out. @param event the event @return the visitor's answer */
    T buildOut(BuildOut event);

    /** Visits an open or partial open. @param event the event @return the visitor's answer */
    T brokenConductor(BrokenConductor event);

    /** Visits a short or partial short. @param event the event @return the visitor's answer */
    T touchingConductors(TouchingConductors event);

    /** Visits a break of one conductor of a pair. @param event the event @return the visitor's answer */
    T oneSideOpen(OneSideOpen event);

    /** Visits a series element. @param event the event @return the visitor's answer */
    T seriesPart(SeriesPart event);

    /** Visits a shunt element. @param event the event @return the visitor's answer */
    T shuntPart(ShuntPart event);

    /** Visits a wire joined to earth. @param event the event @return the visitor's answer */
    T oneSideEarthed(OneSideEarthed event);

    /** Visits a contact between wires of two pairs. @param event the event @return the visitor's answer */
    T cross(Cross event);
}

/**
 * A reflectometer: what it sends, how its receiver and converter see what comes back, and what a person sets on it.
 *
 * <p>It never knows the cable: a response may come from a measured sweep or a sealed paper. {@code measurement} joins the two.
 *
 * <p>Decision: <b>distance zero is where the outgoing edge passes half its height</b>, after the receiver, for every stimulus.
 */
package cablewright.simulator.instrument;

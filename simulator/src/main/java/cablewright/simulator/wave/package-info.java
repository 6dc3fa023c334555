/** What is sent into a line, and what comes back as a function of time. */
package cablewright.simulator.wave;

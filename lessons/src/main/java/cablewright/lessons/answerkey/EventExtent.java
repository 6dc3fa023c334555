// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

/** How the place of an event is asked for. */
public enum EventExtent {
    /** One place. */
    POINT,
    /** Two edges, each a place of its own. */
    EDGES,
    /** Anywhere within the stretch: it has no edges that a trace shows. */
    WITHIN
}

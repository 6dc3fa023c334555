package cablewright.lessons.marking;

/** How the place of an event is asked for. */
enum Extent {
    /** One place. */
    POINT,
    /** Two edges, each a place of its own. */
    EDGES,
    /** Anywhere within the stretch: it has no edges that a trace shows. */
    WITHIN
}

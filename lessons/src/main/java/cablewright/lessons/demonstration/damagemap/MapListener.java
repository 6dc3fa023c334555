// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

/** Hears how a map comes along. Called from the threads that compute it. */
public interface MapListener {

    /**
     * Returns how far it is.
     *
     * @param done cells that are done
     * @param of cells in all
     */
    void progress(int done, int of);

    /**
     * Hands out the coarse map, before the fine one is begun.
     *
     * @param map the coarse map
     */
    void coarse(DamageMap map);

    /**
     * A listener that doesn't care.
     *
     * @return the listener
     */
    static MapListener none() {
        return new MapListener() {
            @Override
            public void progress(int done, int of) {
                // Nobody asked.
            }

            @Override
            public void coarse(DamageMap map) {
                // Nobody asked.
            }
        };
    }
}

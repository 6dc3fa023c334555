// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityRules.Verdict;
import java.util.Optional;

/** What a map of gradual damage shows, cell by cell. A coarse map answers for a cell with the computed one nearest to it. */
public final class DamageMap {

    private final DamageMapSettings settings;
    private final int stride;
    private final double[] contrastVolts;
    private final double noiseVolts;
    private final Visibility[] visibility;
    private final HiddenReason[] reason;

    DamageMap(DamageMapSettings settings, int stride, double noiseVolts) {
        int cells = settings.rows() * settings.columns();
        this.settings = settings;
        this.stride = stride;
        this.noiseVolts = noiseVolts;
        this.contrastVolts = new double[cells];
        this.visibility = new Visibility[cells];
        this.reason = new HiddenReason[cells];
    }

    private DamageMap(DamageMap other, int stride) {
        this.settings = other.settings;
        this.stride = stride;
        this.noiseVolts = other.noiseVolts;
        this.contrastVolts = other.contrastVolts.clone();
        this.visibility = other.visibility.clone();
        this.reason = other.reason.clone();
    }

    DamageMap copy(int copyStride) {
        return new DamageMap(this, copyStride);
    }

    boolean has(int row, int column) {
        return visibility[row * settings.columns() + column] != null;
    }

    /** Each cell is written by one thread, before the map is handed out. */
    void put(int row, int column, double contrast, Verdict verdict) {
        int cell = row * settings.columns() + column;
        contrastVolts[cell] = contrast;
        visibility[cell] = verdict.visibility();
        reason[cell] = verdict.reason().orElse(null);
    }

    private int cell(int row, int column) {
        return nearest(row, settings.rows()) * settings.columns() + nearest(column, settings.columns());
    }

    private int nearest(int index, int count) {
        return stride == 1 ? index : Math.min(count - 1, index / stride * stride + stride / 2);
    }

    public DamageMapSettings settings() {
        return settings;
    }

    /**
     * Distinguishes a finished map from a coarse one.
     *
     * @return whether every cell was computed
     */
    public boolean isComplete() {
        return stride == 1;
    }

    /**
     * Returns the noise against which the map was judged.
     *
     * @return root mean square after averaging [V]
     */
    public double noiseVolts() {
        return noiseVolts;
    }

    /**
     * Returns by how much the damage changes the trace.
     *
     * @param row which row, from 0 for the mildest
     * @param column which column, from 0 for the nearest
     * @return largest change for an outgoing wave of 1 V, without sign [V]
     */
    public double contrastVolts(int row, int column) {
        return contrastVolts[cell(row, column)];
    }

    /**
     * Returns whether the damage can be seen.
     *
     * @param row which row, from 0 for the mildest
     * @param column which column, from 0 for the nearest
     * @return its visibility
     */
    public Visibility visibility(int row, int column) {
        return visibility[cell(row, column)];
    }

    /**
     * Returns why the damage is not clear.
     *
     * @param row which row, from 0 for the mildest
     * @param column which column, from 0 for the nearest
     * @return the reason; empty where it is clear
     */
    public Optional<HiddenReason> reason(int row, int column) {
        return Optional.ofNullable(reason[cell(row, column)]);
    }

    /**
     * Counts cells.
     *
     * @param sought a visibility
     * @return share of all cells that have it, 0 to 1
     */
    public double share(Visibility sought) {
        int count = 0;
        for (int row = 0; row < settings.rows(); row++) {
            for (int column = 0; column < settings.columns(); column++) {
                count += visibility(row, column) == sought ? 1 : 0;
            }
        }
        return (double) count / visibility.length;
    }
}

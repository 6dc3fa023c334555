// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.CableType;
import java.util.List;

/**
 * Which map of gradual damage is asked for: how much the impedance falls where it is worst, row by row on a logarithmic
 * scale, against where the damage begins, column by column on a linear one.
 *
 * @param type the cable
 * @param instrument the instrument
 * @param settings what is set on it; the range must hold the farthest damage
 * @param profile how the damage grows and fades; not flat, which would have edges
 * @param damageMetres how long the damage is [m], above 0 to 1000
 * @param mildestChange fall of impedance of the mildest row, over the sound cable's, 1e-5 or more
 * @param worstChange fall of impedance of the worst row, more than the mildest, to 0.9
 * @param farthestMetres where the damage of the farthest column begins, at most [m]
 * @param rows how many rows, 4 to 512
 * @param columns how many columns, 4 to 512
 */
public record DamageMapSettings(
        CableType type,
        Instrument instrument,
        Settings settings,
        Profile profile,
        @Between(least = 1e-3, most = 1000) double damageMetres,
        @Between(least = 1e-5, most = 0.9) double mildestChange,
        double worstChange,
        double farthestMetres,
        @Between(least = 4, most = 512) int rows,
        @Between(least = 4, most = 512) int columns) {

    /** The name of the damage on the cable of a cell. */
    public static final String DAMAGE = "damage";

    /** Checks the ranges. */
    public DamageMapSettings {
        Require.components(
                DamageMapSettings.class,
                type,
                instrument,
                settings,
                profile,
                damageMetres,
                mildestChange,
                worstChange,
                farthestMetres,
                rows,
                columns);
        if (profile == Profile.FLAT) {
            throw new IllegalArgumentException(
                    "profile is FLAT; gradual damage grows and fades, so choose RAISED_COSINE, TRIANGLE or a linear one");
        }
        Require.between("worstChange", worstChange, mildestChange * (1 + 1e-9), 0.9);
        Require.between("farthestMetres", farthestMetres, 0.1, settings.rangeMetres());
    }

    /**
     * Returns the fall of impedance of a row.
     *
     * @param row which, from 0 for the mildest; fractions are places between rows
     * @return fall where it is worst, over the sound cable's impedance
     */
    public double changeAt(double row) {
        return mildestChange * Math.pow(worstChange / mildestChange, (row + 0.5) / rows);
    }

    /**
     * Returns where the damage of a column begins.
     *
     * @param column which, from 0 for the nearest; fractions are places between columns
     * @return distance from the port [m]
     */
    public double metresAt(double column) {
        return farthestMetres * (column + 0.5) / columns;
    }

    /**
     * Returns the cable of one cell: sound and without end but for the damage.
     *
     * @param row which row
     * @param column which column
     * @return the cable, its damage under the name {@value #DAMAGE}
     */
    public Cable cableAt(int row, int column) {
        return cable(metresAt(column), changeAt(row));
    }

    Cable cable(double startMetres, double change) {
        GradualDamage damage = new GradualDamage(DAMAGE, startMetres, damageMetres, 1 - change, profile);
        return new Cable(
                "Gradual damage",
                List.of(new Run(type, startMetres + damageMetres + settings.rangeMetres())),
                List.of(damage),
                new FarEnd.Endless(type));
    }
}

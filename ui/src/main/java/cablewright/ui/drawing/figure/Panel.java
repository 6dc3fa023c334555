// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.lessons.demonstration.Curve;
import cablewright.lessons.demonstration.damagemap.DamageMap;
import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.palette.Tone;
import java.util.List;
import java.util.Optional;

/** One part of a figure. */
public sealed interface Panel {

    /**
     * Returns what the part shows.
     *
     * @return a few words
     */
    String title();

    /**
     * A line of a plot.
     *
     * @param name what it is; shown in the legend unless empty
     * @param curve its points, in the units of the axes
     * @param tone its colour
     * @param dashed whether it is dashed, so that it can be recognised without colour
     */
    record Line(String name, Curve curve, Tone tone, boolean dashed) {}

    /**
     * A straight line of a plot, as strong as what it stands for.
     *
     * @param fromX where it begins
     * @param fromY where it begins
     * @param toX where it ends
     * @param toY where it ends
     * @param weight how strong, 0 to 1
     * @param tone its colour
     */
    record Stroke(double fromX, double fromY, double toX, double toY, double weight, Tone tone) {}

    /**
     * A place on the horizontal axis.
     *
     * @param text what is there
     * @param x where
     * @param tone its colour
     */
    record Mark(String text, double x, Tone tone) {}

    /**
     * A plot of lines.
     *
     * @param title what it shows
     * @param x horizontal axis
     * @param y vertical axis
     * @param lines its lines
     * @param strokes straight lines under them
     * @param marks places that are labelled
     * @param noise half of the height of a band about 0 in which noise lies; 0 for none
     * @param noiseName what the band is called in the legend
     */
    record Plot(
            String title,
            Axis x,
            Axis y,
            List<Line> lines,
            List<Stroke> strokes,
            List<Mark> marks,
            double noise,
            String noiseName)
            implements Panel {
        /** Copies the lists. */
        public Plot {
            lines = List.copyOf(lines);
            strokes = List.copyOf(strokes);
            marks = List.copyOf(marks);
        }

        /**
         * Makes a plot of lines alone.
         *
         * @param title what it shows
         * @param x horizontal axis
         * @param y vertical axis
         * @param lines its lines
         */
        public Plot(String title, Axis x, Axis y, List<Line> lines) {
            this(title, x, y, lines, List.of(), List.of(), 0, "");
        }

        /**
         * Adds places.
         *
         * @param places the places
         * @return a plot with them
         */
        public Plot with(List<Mark> places) {
            return new Plot(title, x, y, lines, strokes, places, noise, noiseName);
        }

        /**
         * Adds the band in which noise lies.
         *
         * @param half half of its height
         * @param name what it is called in the legend
         * @return a plot with it
         */
        public Plot withNoise(double half, String name) {
            return new Plot(title, x, y, lines, strokes, marks, half, name);
        }
    }

    /**
     * A map of what can be seen, severity against distance.
     *
     * @param title what it shows
     * @param x horizontal axis, as far as the map's distances, in the unit shown
     * @param y vertical axis, the map's severities in percent, logarithmic
     * @param map the map
     * @param chosenX the place that is looked at, on the horizontal axis
     * @param chosenY the place that is looked at, on the vertical axis
     * @param names what clear, marginal and hidden are called
     */
    record Map(String title, Axis x, Axis y, DamageMap map, double chosenX, double chosenY, List<String> names)
            implements Panel {
        /** Copies the list. */
        public Map {
            names = List.copyOf(names);
        }
    }

    /**
     * A cut through a cable.
     *
     * @param title what it shows
     * @param sound the cable as made
     * @param changed the cable as it is, if it differs
     * @param notes a line under each of the two
     */
    record Cut(String title, SectionDrawing sound, Optional<SectionDrawing> changed, List<String> notes)
            implements Panel {
        /** Copies the list. */
        public Cut {
            notes = List.copyOf(notes);
        }
    }
}

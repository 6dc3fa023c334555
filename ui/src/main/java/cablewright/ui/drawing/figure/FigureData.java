// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import cablewright.lessons.demonstration.Curve;
import cablewright.lessons.demonstration.damagemap.DamageMap;
import java.util.Locale;

/**
 * The numbers of a figure as CSV: lines that begin with '#' say what it is and what its axes measure; then one row for each
 * point, with the columns panel, series, x, y and value. The value of a cell of a map is its contrast over the noise.
 */
public final class FigureData {

    private final StringBuilder out = new StringBuilder();

    private FigureData() {}

    /**
     * Writes a figure's data.
     *
     * @param figure the figure
     * @return CSV text
     */
    public static String csv(Figure figure) {
        FigureData data = new FigureData();
        data.write(figure);
        return data.out.toString();
    }

    private void write(Figure figure) {
        remark(figure.title());
        remark(figure.caption());
        remark(figure.settings());
        int number = 0;
        for (Figure.Row row : figure.rows()) {
            for (Figure.Part part : row.panels()) {
                number++;
                remark("panel " + number + ": " + part.panel().title() + axes(part.panel()));
            }
        }
        out.append("panel,series,x,y,value\n");
        number = 0;
        for (Figure.Row row : figure.rows()) {
            for (Figure.Part part : row.panels()) {
                number++;
                write(number, part.panel());
            }
        }
    }

    private void remark(String text) {
        out.append("# ").append(text.replaceAll("\\R", " ")).append('\n');
    }

    private static String axes(Panel panel) {
        if (panel instanceof Panel.Plot plot) {
            return "; x: " + plot.x().label() + "; y: " + plot.y().label();
        }
        if (panel instanceof Panel.Map map) {
            return "; x: " + map.x().label() + "; y: " + map.y().label() + "; value: contrast over noise";
        }
        return "";
    }

    private void write(int number, Panel panel) {
        if (panel instanceof Panel.Plot plot) {
            for (Panel.Line line : plot.lines()) {
                write(number, line.name().isEmpty() ? plot.title() : line.name(), line.curve());
            }
            for (Panel.Stroke stroke : plot.strokes()) {
                row(number, "stroke", stroke.fromX(), stroke.fromY(), Double.toString(stroke.weight()));
                row(number, "stroke", stroke.toX(), stroke.toY(), Double.toString(stroke.weight()));
            }
        } else if (panel instanceof Panel.Map map) {
            write(number, map);
        }
    }

    private void write(int number, String series, Curve curve) {
        for (int i = 0; i < curve.count(); i++) {
            row(number, series, curve.x(i), curve.y(i), "");
        }
    }

    private void write(int number, Panel.Map panel) {
        DamageMap map = panel.map();
        int rows = map.settings().rows();
        int columns = map.settings().columns();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                row(
                        number,
                        map.visibility(row, column).name().toLowerCase(Locale.ROOT),
                        panel.x().valueAt((column + 0.5) / columns),
                        panel.y().valueAt((row + 0.5) / rows),
                        Double.toString(map.contrastVolts(row, column) / map.noiseVolts()));
            }
        }
    }

    private void row(int number, String series, double x, double y, String value) {
        String quoted = series.matches("[^,\"]*") ? series : '"' + series.replace("\"", "\"\"") + '"';
        out.append(number)
                .append(',')
                .append(quoted)
                .append(',')
                .append(x)
                .append(',')
                .append(y);
        out.append(',').append(value).append('\n');
    }
}

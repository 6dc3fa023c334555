// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.feedback.Feedback;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.text.Texts;
import cablewright.ui.drawing.text.TerminalStyle;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.TracePlot.Window;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a trainee looks at a round: in which unit, which part of the range, how high. */
final class RoundView {

    private static final String BUNDLE = "cablewright.ui.terminal.terminal";
    private static final double LEAST_SHARE_OF_RANGE = 1e-3;

    private final TerminalStyle style;
    private final Texts texts;
    private final int columns;
    private final int lines;
    private Words words;
    private Optional<Window> zoom = Optional.empty();
    private OptionalDouble scaleShare = OptionalDouble.empty();

    RoundView(PracticeTerminal.Screen screen) {
        this.style = screen.style();
        this.columns = screen.columns();
        this.lines = screen.lines();
        this.words = Words.in(screen.unit(), screen.locale());
        this.texts = new Texts(BUNDLE, screen.locale());
    }

    Words words() {
        return words;
    }

    Texts texts() {
        return texts;
    }

    TerminalStyle style() {
        return style;
    }

    Prose prose() {
        return new Prose(columns - 1, words.quantities());
    }

    RoundScreen screen(Round round) {
        return new RoundScreen(round, this, columns, lines);
    }

    void show(LengthUnit unit) {
        words = words.with(unit);
        zoom = Optional.empty();
    }

    void zoomOut() {
        zoom = Optional.empty();
    }

    void scaleTo(OptionalDouble share) {
        scaleShare = share;
    }

    /** Forgets what was looked at. */
    void reset() {
        zoom = Optional.empty();
        scaleShare = OptionalDouble.empty();
    }

    void zoomTo(Round round, Instruction.Zoom asked) {
        LengthUnit unit = words.quantities().unit();
        Window whole = screen(round).wholeWindow();
        double left = Math.max(whole.left(), unit.fromMetres(Math.min(asked.fromMetres(), asked.toMetres())));
        double right = Math.min(whole.right(), unit.fromMetres(Math.max(asked.fromMetres(), asked.toMetres())));
        if (right - left < LEAST_SHARE_OF_RANGE * (whole.right() - whole.left())) {
            throw new Refused(
                    "zoomEmpty", words.quantities().shortLength(round.settings().rangeMetres()));
        }
        zoom = Optional.of(new Window(left, right, whole.bottom(), whole.top()));
    }

    /** Does what changes no flag: reads a point, or shows the tracks as they then are. */
    String done(Round round, Instruction instruction) {
        if (instruction instanceof Instruction.At at) {
            return screen(round).reading(at.metres());
        }
        if (instruction instanceof Instruction.Zoom zoom) {
            zoomTo(round, zoom);
        } else if (instruction instanceof Instruction.Scale scale) {
            scaleTo(OptionalDouble.of(scale.share()));
        } else {
            set(round, instruction);
        }
        return tracks(round);
    }

    /** Changes a setting within what is permitted. */
    void set(Round round, Instruction instruction) {
        SettingsDesk desk = new SettingsDesk(round.task().permitted(), this);
        if (instruction instanceof Instruction.Width width) {
            round.set(desk.width(round.settings(), width));
        } else if (instruction instanceof Instruction.Velocity velocity) {
            round.set(desk.velocity(round.settings(), velocity.fraction()));
            zoomOut();
        } else if (instruction instanceof Instruction.Range range) {
            round.set(desk.range(round.settings(), range.metres()));
            zoomOut();
        } else if (instruction instanceof Instruction.Gain gain) {
            round.set(desk.gain(round.settings(), gain.decibels()));
        } else if (instruction instanceof Instruction.Averages averages) {
            round.set(desk.averages(round.settings(), averages.count()));
        } else {
            round.joinTo(desk.end(((Instruction.TestedEnd) instruction).end()));
        }
    }

    /** The tracks of a round as they are looked at. */
    String tracks(Round round) {
        RoundScreen screen = screen(round);
        Window shown =
                zoom.map(part -> screen.fitted(part.left(), part.right())).orElseGet(screen::wholeWindow);
        if (scaleShare.isPresent()) {
            double height = 100 * scaleShare.getAsDouble();
            shown = new Window(shown.left(), shown.right(), -height, height);
        }
        return screen.tracks(shown);
    }

    /** Tracks, marks and the cable of a round that was handed in. */
    String result(Round round) {
        ResultScreen result = new ResultScreen(round.exercise(), this);
        double top = round.settings().stimulus().topHertz();
        CableDrawing drawing = CableDrawing.of(
                round.exercise().cable(), round.end(), round.settings().velocityFraction(), top);
        MarkSheet sheet = round.sheet().orElseThrow();
        List<FindingReasons> reasons = Feedback.of(round.exercise(), sheet, round.end(), () -> false);
        return tracks(round) + "\n" + result.marks(sheet, reasons) + "\n" + result.cable(round.end(), drawing, top);
    }
}

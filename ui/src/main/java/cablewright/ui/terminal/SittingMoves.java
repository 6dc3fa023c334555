// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.ui.terminal.Instruction.Plain;
import java.util.OptionalDouble;

/** What can be done to a round that says nothing about what is right: look, set, flag. */
final class SittingMoves {

    private final RoundView view;

    SittingMoves(RoundView view) {
        this.view = view;
    }

    /** Whether an instruction only looks, and so may be done when the time is up. */
    boolean isLooking(Instruction instruction) {
        return instruction instanceof Instruction.At
                || instruction instanceof Instruction.Zoom
                || instruction instanceof Instruction.Scale;
    }

    String plain(Round round, Plain instruction, String titles) {
        return switch (instruction) {
            case TRACE -> view.tracks(round);
            case ZOOM_OUT -> {
                view.zoomOut();
                yield view.tracks(round);
            }
            case SCALE_AUTO -> {
                view.scaleTo(OptionalDouble.empty());
                yield view.tracks(round);
            }
            case SETTINGS -> new SettingsDesk(round.task().permitted(), view).table(round.settings(), round.end());
            case KINDS -> new ExercisePage(view).kinds();
            case LIST -> view.screen(round).flagList();
            default -> titles;
        };
    }

    String done(Round round, Instruction instruction) {
        if (instruction instanceof Instruction.SetFlag flag) {
            return "  " + view.screen(round).flagged(round.add(flag)) + "\n";
        }
        if (instruction instanceof Instruction.Remove remove) {
            round.remove(remove.letter());
            return view.screen(round).flagList();
        }
        return view.done(round, instruction);
    }
}

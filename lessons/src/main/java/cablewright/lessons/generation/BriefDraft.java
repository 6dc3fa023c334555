// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Cable;
import java.util.List;
import java.util.Locale;

/** Writes the brief of a generated exercise. Places and callers are invented; nothing in it gives the answer away. */
final class BriefDraft {

    private static final List<String> PLACES = List.of(
            "Quay camera",
            "Lamp house",
            "Breakwater mast",
            "Tide hut",
            "Net loft",
            "Ferry ramp",
            "Ice house",
            "Pilot station",
            "North greenhouse",
            "Salt pans",
            "Slipway",
            "Signal hut");

    private static final List<String> CALLERS = List.of(
            "The harbour office", "The night watch", "The ferry clerk", "The greenhouse crew", "The pilot station");

    private final SeededRandom dice;
    private final CablePlan plan;

    BriefDraft(SeededRandom dice, CablePlan plan) {
        this.dice = dice;
        this.plan = plan;
    }

    String title() {
        return plan.family() == ExerciseFamily.REEL_ACCEPTANCE
                ? "Reel " + (100 + dice.upTo(899))
                : dice.of(PLACES) + " " + (1 + dice.upTo(8));
    }

    String brief() {
        Cable cable = plan.cable();
        String line = String.format(
                Locale.ROOT,
                "%s, %.0f m by the record, velocity of propagation %.3f.",
                plan.type().title(),
                cable.lengthMetres(),
                plan.type().section().velocityFraction());
        return opening() + " " + line + "\n\nFind what is there, name it, and say what belongs and what is damage. "
                + "The line may be sound.\n\n*Saltmarsh Point and all in it are invented.*";
    }

    private String opening() {
        String caller = dice.of(CALLERS);
        switch (plan.family()) {
            case COAX_PLANT:
                return caller
                        + dice.of(List.of(
                                " reports weak pictures past this length.",
                                " asks for a look before the storm season.",
                                " hears that the ground was opened near here."));
            case COAX_DROP:
                return caller
                        + dice.of(List.of(
                                " says that the picture tears at times.",
                                " sees sparkles on the screen since the move.",
                                " wants the line looked at before it is used again."));
            case TELEPHONE_LOOP:
                return caller
                        + dice.of(List.of(
                                " hears a crackle on the pair.",
                                " says that the link drops in the rain.",
                                " has a slow link."));
            case DATA_CABLING:
                return caller
                        + dice.of(List.of(
                                " has a link that falls back to a lower speed.",
                                " wants the outlet proved before use."));
            case BUILDING_WIRE:
                return caller
                        + dice.of(List.of(
                                " has a dead outlet. The circuit is off, locked off and proved dead.",
                                " wants an old circuit looked at. It is off, locked off and proved dead."));
            default:
                return "A new, dry reel lies on the factory floor. Accept it or say what is wrong.";
        }
    }
}

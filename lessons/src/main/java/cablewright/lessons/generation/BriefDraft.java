// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

/** Writes the brief of a generated exercise. Nothing in it gives the answer away. */
final class BriefDraft {

    private final SeededRandom dice;
    private final CablePlan plan;
    private final Contrast contrast;
    private final GenerationTexts texts;

    BriefDraft(SeededRandom dice, CablePlan plan, Contrast contrast, GenerationTexts texts) {
        this.contrast = contrast;
        this.dice = dice;
        this.plan = plan;
        this.texts = texts;
    }

    String title() {
        return plan.family() == ExerciseFamily.REEL_ACCEPTANCE
                ? texts.say("title.reel", 100 + dice.upTo(899))
                : texts.say("title.place", texts.drawn(dice, "place"), 1 + dice.upTo(8));
    }

    String brief() {
        String length = GenerationTexts.whole(plan.cable().lengthMetres());
        String line = contrast == Contrast.BOTH_ENDS
                ? texts.say("brief.line.bothEnds", plan.type().title(), length)
                : texts.say(
                        "brief.line",
                        plan.type().title(),
                        length,
                        GenerationTexts.number(plan.type().section().velocityFraction(), 3));
        return opening() + " " + line + "\n\n" + texts.say("brief.task") + "\n\n" + texts.say("brief.invented");
    }

    private String opening() {
        String caller = texts.drawn(dice, "caller");
        String family = "opening." + GenerationTexts.word(plan.family());
        if (plan.family() == ExerciseFamily.REEL_ACCEPTANCE) {
            return texts.say(family);
        }
        Complaint complaint = Complaint.draw(dice, plan.family(), plan.cable().events());
        while (texts.variants(key(family, complaint)) == 0) {
            complaint = complaint.plainer();
        }
        return texts.drawn(dice, key(family, complaint), caller);
    }

    private static String key(String family, Complaint complaint) {
        return family + "." + GenerationTexts.word(complaint);
    }
}

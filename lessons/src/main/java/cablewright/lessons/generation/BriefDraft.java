// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

/** Writes the brief of a generated exercise. Nothing in it gives the answer away. */
final class BriefDraft {

    private final SeededRandom dice;
    private final CablePlan plan;
    private final GenerationTexts texts;

    BriefDraft(SeededRandom dice, CablePlan plan, GenerationTexts texts) {
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
        String line = texts.say(
                "brief.line",
                plan.type().title(),
                GenerationTexts.whole(plan.cable().lengthMetres()),
                GenerationTexts.number(plan.type().section().velocityFraction(), 3));
        return opening() + " " + line + "\n\n" + texts.say("brief.task") + "\n\n" + texts.say("brief.invented");
    }

    private String opening() {
        String caller = texts.drawn(dice, "caller");
        String key = "opening." + GenerationTexts.word(plan.family());
        return plan.family() == ExerciseFamily.REEL_ACCEPTANCE ? texts.say(key) : texts.drawn(dice, key, caller);
    }
}

package cablewright.lessons.exercise;

/**
 * One answer that a trainee may choose.
 *
 * @param id name within its question
 * @param text the answer, one line
 * @param reason shown after commit: why it is right, or where the thought goes wrong
 */
public record Choice(String id, String text, @Lines String reason) {

    /** Refuses values that can't be. */
    public Choice {
        Require.id("id", id);
        Require.line("text", text);
        Require.text("reason", reason);
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Nature;
import cablewright.ui.quantity.Quantity;
import cablewright.ui.terminal.Instruction.Plain;
import cablewright.ui.words.LengthUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what a trainee types. Distances without a unit are in the unit that is shown; a gain, a velocity and a count have
 * one unit only; a pulse width always needs its unit.
 */
final class InstructionParser {

    private static final String PLACE = "([+-]?[0-9]*\\.?[0-9]+ ?(?:mm|cm|km|m|ft|in)?)";
    private static final Pattern ONE_OR_TWO_PLACES =
            Pattern.compile(PLACE + "(?: ?(?:-|–|to|\\.\\.) ?" + PLACE + "| " + PLACE + ")?(?: +(.*))?");

    private static final Pattern ANSWER_AND_REASON =
            Pattern.compile("([0-9]|\\S+(?= ))(?: ?because)? ?([A-Za-z]|(?<= )\\S+)");

    /** What electricians call a branch that was left joined. */
    private static final String TEE = "tee";

    private static final Map<String, Plain> PLAIN = plainWords();

    private final LengthUnit unit;

    InstructionParser(LengthUnit unit) {
        this.unit = unit;
    }

    private static Map<String, Plain> plainWords() {
        Map<String, Plain> words = new HashMap<>();
        add(words, Plain.TRACE, "trace", "t", "show");
        add(words, Plain.BRIEF, "brief", "b");
        add(words, Plain.SETTINGS, "settings", "set", "s");
        add(words, Plain.KINDS, "kinds", "k");
        add(words, Plain.LIST, "list", "flags", "l");
        add(words, Plain.COMMIT, "commit", "c");
        add(words, Plain.NEXT, "next", "n");
        add(words, Plain.EXERCISES, "exercises");
        add(words, Plain.FEET, "feet");
        add(words, Plain.METRES, "metres", "meters");
        add(words, Plain.HELP, "help", "h", "?");
        add(words, Plain.QUIT, "quit", "q", "exit", "bye");
        return Map.copyOf(words);
    }

    private static void add(Map<String, Plain> words, Plain instruction, String... spellings) {
        Arrays.stream(spellings).forEach(word -> words.put(word, instruction));
    }

    /**
     * Reads a line.
     *
     * @param line what was typed; not blank
     * @return what is asked for
     * @throws Refused if it can't be understood
     */
    Instruction parse(String line) {
        String clean = line.strip().replaceAll("\\s+", " ").replace('−', '-');
        int space = clean.indexOf(' ');
        String word = (space < 0 ? clean : clean.substring(0, space)).toLowerCase(Locale.ROOT);
        String rest = space < 0 ? "" : clean.substring(space + 1);
        Plain plain = PLAIN.get(word);
        if (plain != null) {
            return withNothingBehind(plain, word, rest);
        }
        return switch (word) {
            case "width", "pulse", "w" -> new Instruction.Width(false, optional(Quantity.TIME, rest));
            case "step" -> new Instruction.Width(true, optional(Quantity.TIME, rest));
            case "velocity", "vop", "nvp", "v" -> new Instruction.Velocity(optional(Quantity.VELOCITY, rest));
            case "range", "r" -> new Instruction.Range(rest.isEmpty() ? OptionalDouble.empty() : distance(rest));
            case "gain", "g" -> new Instruction.Gain(optional(Quantity.LEVEL, bareIn(rest, "dB")));
            case "average", "averages", "averaging", "avg", "a" -> new Instruction.Averages(count(rest));
            case "end", "e" -> new Instruction.TestedEnd(end(rest));
            case "at", "x", "read" -> new Instruction.At(one(rest, "at 84.2"));
            case "zoom", "z" -> zoom(rest);
            case "scale" -> scale(rest);
            case "flag", "f" -> flag(rest);
            case "remove", "rm", "unflag" ->
                new Instruction.Remove(needed(rest, "remove A").toUpperCase(Locale.ROOT));
            case "hint" -> hint(rest);
            case "answer" -> answer(needed(rest, "answer 1"));
            case "exercise" ->
                new Instruction.Open((int) count(needed(rest, "exercise 2")).orElse(0));
            case "save" -> new Instruction.Save(needed(rest, "save attempt.json"));
            default -> throw new Refused("command", shortened(word));
        };
    }

    /** An answer, and behind it the letter or the name of a reason: {@code 3}, {@code 3b}, {@code 3 b}. */
    private static Instruction answer(String rest) {
        Matcher both = ANSWER_AND_REASON.matcher(rest);
        if (both.matches()) {
            return new Instruction.Answer(both.group(1), Optional.of(both.group(2)));
        }
        return new Instruction.Answer(rest, Optional.empty());
    }

    private static Instruction withNothingBehind(Plain plain, String word, String rest) {
        if (!rest.isEmpty()) {
            throw new Refused("nothingBehind", word, shortened(rest));
        }
        return plain;
    }

    private static String needed(String rest, String example) {
        if (rest.isEmpty()) {
            throw new Refused("missing", example);
        }
        return rest;
    }

    private static OptionalDouble optional(Quantity quantity, String text) {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(quantity.parse(text));
        } catch (IllegalArgumentException e) {
            throw new Refused("because", sentence(e.getMessage()));
        }
    }

    private static String bareIn(String text, String onlyUnit) {
        return text.matches("[+-]?[0-9.]+") ? text + onlyUnit : text;
    }

    private static OptionalDouble count(String text) {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!text.matches("[0-9]{1,6}")) {
            throw new Refused("wholeNumber", shortened(text));
        }
        return OptionalDouble.of(Integer.parseInt(text));
    }

    private static Optional<LineEnd> end(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "" -> Optional.empty();
            case "near", "near end" -> Optional.of(LineEnd.NEAR);
            case "far", "far end" -> Optional.of(LineEnd.FAR);
            default -> throw new Refused("end", shortened(text));
        };
    }

    private OptionalDouble distance(String text) {
        return optional(Quantity.LENGTH, bareIn(text.strip(), unit.symbol()));
    }

    private Matcher places(String text, String example) {
        Matcher matcher = ONE_OR_TWO_PLACES.matcher(needed(text, example));
        if (!matcher.matches()) {
            throw new Refused("distance", shortened(text), example);
        }
        return matcher;
    }

    private double one(String text, String example) {
        Matcher matcher = places(text, example);
        if (second(matcher) != null || matcher.group(4) != null) {
            throw new Refused("oneDistance", example);
        }
        return distance(matcher.group(1)).orElseThrow();
    }

    private static String second(Matcher matcher) {
        return matcher.group(2) != null ? matcher.group(2) : matcher.group(3);
    }

    private Instruction zoom(String rest) {
        if (List.of("out", "", "all").contains(rest)) {
            return Plain.ZOOM_OUT;
        }
        Matcher matcher = places(rest, "zoom 80-90");
        if (second(matcher) == null || matcher.group(4) != null) {
            throw new Refused("zoom");
        }
        return new Instruction.Zoom(
                distance(matcher.group(1)).orElseThrow(),
                distance(second(matcher)).orElseThrow());
    }

    private static Instruction scale(String rest) {
        if (List.of("auto", "").contains(rest)) {
            return Plain.SCALE_AUTO;
        }
        double share = optional(Quantity.VOLTAGE, bareIn(rest, "%")).orElseThrow();
        if (!(share > 1e-6 && share <= 10)) {
            throw new Refused("scale");
        }
        return new Instruction.Scale(share);
    }

    private static Instruction hint(String rest) {
        if (rest.isEmpty()) {
            return Plain.HINT;
        }
        if (rest.equalsIgnoreCase("yes")) {
            return Plain.HINT_YES;
        }
        throw new Refused("hint");
    }

    private Instruction flag(String rest) {
        Matcher matcher = places(rest, "flag 84.2 pinch damage");
        String what = matcher.group(4) == null ? "" : matcher.group(4).toLowerCase(Locale.ROOT);
        if (what.isEmpty()) {
            throw new Refused("flag");
        }
        Optional<Verdict> said = verdict(what);
        String kindWords = said.isPresent() ? what.substring(0, Math.max(0, what.lastIndexOf(' '))) : what;
        EventKind kind = kind(kindWords.strip());
        Verdict verdict = said.orElse(kind.nature() == Nature.HARDWARE ? Verdict.BELONGS : Verdict.DAMAGE);
        double a = distance(matcher.group(1)).orElseThrow();
        if (second(matcher) == null) {
            return new Instruction.SetFlag(a, OptionalDouble.empty(), kind, verdict);
        }
        double b = distance(second(matcher)).orElseThrow();
        return new Instruction.SetFlag(Math.min(a, b), OptionalDouble.of(Math.max(a, b)), kind, verdict);
    }

    private static Optional<Verdict> verdict(String what) {
        String last = what.substring(what.lastIndexOf(' ') + 1);
        return switch (last) {
            case "belongs", "belong", "blg" -> Optional.of(Verdict.BELONGS);
            case "damage", "damaged", "dmg" -> Optional.of(Verdict.DAMAGE);
            default -> Optional.empty();
        };
    }

    private static EventKind kind(String words) {
        String id = words.equals(TEE) ? EventKind.BRIDGED_TAP.id() : words.replace(' ', '-');
        if (id.isEmpty()) {
            throw new Refused("kindMissing");
        }
        List<EventKind> begun = Arrays.stream(EventKind.values())
                .filter(kind -> kind.id().equals(id) || kind.id().startsWith(id))
                .toList();
        Optional<EventKind> exact =
                begun.stream().filter(kind -> kind.id().equals(id)).findFirst();
        if (exact.isEmpty() && begun.size() != 1) {
            throw new Refused("kind", shortened(words));
        }
        return exact.orElseGet(() -> begun.get(0));
    }

    private static String sentence(String message) {
        return message.endsWith(".") ? message : message + ".";
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}

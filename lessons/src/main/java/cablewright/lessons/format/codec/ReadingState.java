// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is known while a file is read: the problems so far, and the cable types that the file brings along. */
public final class ReadingState {

    /** Enough to work with; a file with more is most likely not one of ours. */
    private static final int MOST_PROBLEMS = 100;

    private final boolean leavesOutWhatIsNew;
    private final List<FormatProblem> problems = new ArrayList<>();
    private final Map<String, CableType> ownTypes = new LinkedHashMap<>();

    /** Makes the state of a file of this version. */
    public ReadingState() {
        this(false);
    }

    private ReadingState(boolean leavesOutWhatIsNew) {
        this.leavesOutWhatIsNew = leavesOutWhatIsNew;
    }

    /** Reads a file of a newer version: fields that are not known are left out instead of refused. */
    public static ReadingState ofNewer() {
        return new ReadingState(true);
    }

    /** Returns whether fields that are not known are left out instead of refused. */
    public boolean leavesOutWhatIsNew() {
        return leavesOutWhatIsNew;
    }

    /** Adds a problem. */
    public void problem(At at, String fault, String remedy) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new FormatProblem(at.path(), fault, remedy));
        }
    }

    /** Whether another problem would still be kept; looking for the words of one may cost more than reading on. */
    boolean hasRoomForProblems() {
        return problems.size() < MOST_PROBLEMS;
    }

    /** Takes a refusal of a constructor apart: "field is value; what is allowed". */
    void refusal(At at, String message) {
        String plain = message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
        int cut = plain.indexOf("; ");
        String fault = cut < 0 ? plain : plain.substring(0, cut);
        String remedy = cut < 0 ? "change it" : plain.substring(cut + 2);
        int space = fault.indexOf(' ');
        String first = space < 0 ? fault : fault.substring(0, space);
        boolean namesField =
                space > 0 && first.matches("[a-z][A-Za-z]*") && fault.matches("\\w+ (is|has|ends?|nest|reaches) .*");
        if (namesField) {
            problem(at.field(first), Shown.text(fault.substring(space + 1)), remedy);
        } else {
            problem(at, "can't be: " + fault, remedy);
        }
    }

    /** Adds a cable type that the file brings along. */
    public void addType(CableType type, At at) {
        if (ownTypes.put(type.id(), type) != null) {
            problem(at.field("id"), "is \"" + type.id() + "\" for the second time", "give each type an id of its own");
        }
    }

    Optional<CableType> type(String id) {
        return Optional.ofNullable(ownTypes.get(id))
                .or(() -> Catalogue.standard().find(id));
    }

    /** Returns all problems so far, in the order of the file. */
    public List<FormatProblem> problems() {
        return problems;
    }

    /** Returns whether there are no problems so far. */
    public boolean isSound() {
        return problems.isEmpty();
    }
}

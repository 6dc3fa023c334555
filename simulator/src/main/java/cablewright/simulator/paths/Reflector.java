// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import java.util.List;

/** What sends part of a wave back at one place of a line. */
public sealed interface Reflector {

    /** The port, where the instrument's source does not match the line. */
    record Port() implements Reflector {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.port();
        }
    }

    /** Two types of cable that meet. */
    record CableChange() implements Reflector {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.cableChange();
        }
    }

    /** The end of the line itself. */
    record EndOfLine() implements Reflector {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.endOfLine();
        }
    }

    /**
     * The end of a branch.
     *
     * @param jointId the event by which the branch leaves its line
     */
    record EndOfBranch(String jointId) implements Reflector {
        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.endOfBranch(jointId);
        }
    }

    /**
     * Events that touch.
     *
     * @param ids their names, in alphabetical order; one or more
     */
    record Events(List<String> ids) implements Reflector {
        /** Sorts the names. */
        public Events {
            if (ids.isEmpty()) {
                throw new IllegalArgumentException("ids is empty; allowed is one name or more");
            }
            ids = ids.stream().sorted().toList();
        }

        @Override
        public <T> T accept(Visitor<T> visitor) {
            return visitor.events(ids);
        }
    }

    /**
     * One method for each kind of reflector.
     *
     * @param <T> what each method returns
     */
    interface Visitor<T> {
        T port();

        T cableChange();

        T endOfLine();

        T endOfBranch(String jointId);

        T events(List<String> ids);
    }

    /**
     * Calls the visitor's method for this kind of reflector.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(Visitor<T> visitor);

    /**
     * Returns one event as a reflector.
     *
     * @param id the event's name
     * @return the reflector
     */
    static Reflector event(String id) {
        return new Events(List.of(id));
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.check;

import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is stated on the components of a record, read once for each record. */
public final class Components {

    private static final ClassValue<Components> ALL = new ClassValue<>() {
        @Override
        protected Components computeValue(Class<?> type) {
            return new Components(type);
        }
    };

    private final Class<?> type;
    private final List<Stated> stated;

    private Components(Class<?> type) {
        this.type = type;
        this.stated = Arrays.stream(type.getRecordComponents()).map(Stated::new).toList();
    }

    /** Returns what is stated on the components of a record. */
    public static Components of(Class<?> type) {
        return ALL.get(type);
    }

    /**
     * Returns what is stated on a component.
     *
     * @throws IllegalStateException if there is no such component
     */
    public Stated named(String component) {
        return stated.stream()
                .filter(it -> it.name().equals(component))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(type + " has no component " + component));
    }

    void check(Object... values) {
        if (values.length != stated.size()) {
            throw new IllegalStateException(
                    type + " has " + stated.size() + " components; " + values.length + " were given to be checked");
        }
        for (int i = 0; i < values.length; i++) {
            stated.get(i).check(values[i]);
        }
    }

    /**
     * Finds an annotation of a component, also one that stands on another annotation of it: so a limit that many records
     * share has one name and one place.
     */
    public static <A extends Annotation> Optional<A> find(AnnotatedElement element, Class<A> wanted) {
        A own = element.getAnnotation(wanted);
        if (own != null) {
            return Optional.of(own);
        }
        return Arrays.stream(element.getAnnotations())
                .map(it -> it.annotationType().getAnnotation(wanted))
                .filter(it -> it != null)
                .findFirst();
    }

    /** What is stated on one component. */
    public static final class Stated {

        private final String name;
        private final Optional<Range> range;
        private final Optional<Usual> usual;
        private final Optional<Entries> entries;
        private final Optional<Text> text;
        private final Optional<Lines> lines;
        private final Optional<Matches> form;
        private final Optional<PowerOfTwo> power;

        private Stated(RecordComponent component) {
            this.name = component.getName();
            this.range = Range.on(component);
            this.usual = find(component, Usual.class);
            this.entries = find(component, Entries.class);
            this.text = find(component, Text.class);
            this.lines = find(component, Lines.class);
            this.form = find(component, Matches.class);
            this.power = find(component, PowerOfTwo.class);
        }

        /** Returns the component's name. */
        public String name() {
            return name;
        }

        /** Returns the range of a number. */
        public Optional<Range> range() {
            return range;
        }

        /** Returns the values of a number that are met in practice. */
        public Optional<Usual> usual() {
            return usual;
        }

        /** Returns how many entries a list may have. */
        public Optional<Entries> entries() {
            return entries;
        }

        /** Returns the limit of a text on one line. */
        public Optional<Text> text() {
            return text;
        }

        /** Returns the limit of a text of several lines. */
        public Optional<Lines> lines() {
            return lines;
        }

        /** Returns the form of a text. */
        public Optional<Matches> form() {
            return form;
        }

        /** Returns the limits of a power of two. */
        public Optional<PowerOfTwo> power() {
            return power;
        }

        private void check(Object value) {
            Require.present(name, value);
            if (value instanceof List<?> list) {
                entries.ifPresent(it -> Require.entries(name, list, it));
                list.forEach(this::checkOne);
            } else if (value instanceof OptionalDouble number) {
                number.ifPresent(this::checkOne);
            } else if (value instanceof Optional<?> held) {
                held.ifPresent(this::checkOne);
            } else {
                checkOne(value);
            }
        }

        private void checkOne(Object value) {
            Require.present(name, value);
            if (value instanceof Number number) {
                range.ifPresent(it -> Require.within(name, number.doubleValue(), it));
                power.ifPresent(it -> Require.powerOfTwo(name, number.intValue(), it));
            } else if (value instanceof String string) {
                text.ifPresent(it -> Require.text(name, string, it));
                lines.ifPresent(it -> Require.lines(name, string, it));
                form.ifPresent(it -> Require.matches(name, string, it));
            }
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Copies of records in which one component differs. What the record's constructor refuses is thrown as it was. */
public final class Copies {

    private Copies() {}

    /**
     * Copies a record.
     *
     * @param record the record
     * @param component name of the component that differs
     * @param value its value in the copy
     * @throws IllegalArgumentException if the record's constructor refuses the value
     */
    public static <T> T with(T record, String component, Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        boolean found = false;
        for (int i = 0; i < components.length; i++) {
            boolean wanted = components[i].getName().equals(component);
            found |= wanted;
            values[i] = wanted ? value : get(record, components[i]);
        }
        if (!found) {
            throw new IllegalStateException(record.getClass() + " has no component " + component);
        }
        return make(record, components, values);
    }

    /** Returns the value of a component. */
    public static Object get(Object record, String component) {
        RecordComponent found = Arrays.stream(record.getClass().getRecordComponents())
                .filter(it -> it.getName().equals(component))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(record.getClass() + " has no component " + component));
        return get(record, found);
    }

    private static Object get(Object record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the component " + component.getName() + " could not be read", e);
        }
    }

    @SuppressWarnings("unchecked")
    private static <T> T make(T record, RecordComponent[] components, Object[] values) {
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return (T) record.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException) {
                throw (IllegalArgumentException) e.getCause();
            }
            throw new IllegalStateException("the record " + record.getClass() + " could not be made", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the record " + record.getClass() + " could not be made", e);
        }
    }
}

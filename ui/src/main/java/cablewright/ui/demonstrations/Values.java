// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is set, by the controls' names.
 *
 * @param byId the values
 */
public record Values(Map<String, Double> byId) {

    /** Copies the map. */
    public Values {
        byId = Map.copyOf(byId);
    }

    /**
     * Takes each control's first value.
     *
     * @param controls the controls
     * @return the values
     */
    public static Values initial(List<Control> controls) {
        Map<String, Double> values = new HashMap<>();
        controls.forEach(control -> values.put(control.id(), control.initial()));
        return new Values(values);
    }

    /**
     * Changes one value.
     *
     * @param id the control's name
     * @param value its value
     * @return values alike but for it
     */
    public Values with(String id, double value) {
        Map<String, Double> values = new HashMap<>(byId);
        values.put(id, value);
        return new Values(values);
    }

    /**
     * Returns a value.
     *
     * @param id the control's name
     * @return its value
     */
    public double get(String id) {
        Double value = byId.get(id);
        if (value == null) {
            throw new IllegalArgumentException("there is no control \"" + id + "\"");
        }
        return value;
    }

    int choice(String id) {
        return (int) get(id);
    }

    boolean isOn(String id) {
        return get(id) > 0.5;
    }
}

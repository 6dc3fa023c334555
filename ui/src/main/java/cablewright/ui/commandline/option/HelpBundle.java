// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import java.util.Arrays;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;

/** The help texts together with the limits to which they refer as {@code ${bundle:limit.range}}. */
public final class HelpBundle extends ResourceBundle {

    private final Map<String, String> limits =
            Arrays.stream(OptionLimit.values()).collect(Collectors.toMap(OptionLimit::key, OptionLimit::words));

    /**
     * Makes the bundle.
     *
     * @param texts the help texts
     */
    public HelpBundle(ResourceBundle texts) {
        setParent(texts);
    }

    @Override
    protected Object handleGetObject(String key) {
        return limits.get(key);
    }

    @Override
    public Enumeration<String> getKeys() {
        Set<String> keys = new HashSet<>(Collections.list(parent.getKeys()));
        keys.addAll(limits.keySet());
        return Collections.enumeration(keys);
    }
}

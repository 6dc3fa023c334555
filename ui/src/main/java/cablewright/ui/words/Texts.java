// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences of one resource bundle. A place such as {@code {0}} takes the argument of that number; nothing else in a
 * sentence means anything, so apostrophes and percent signs are written as they are.
 */
public final class Texts {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private final ResourceBundle bundle;

    /**
     * Opens a bundle.
     *
     * @param bundleName full name of the bundle, such as {@code cablewright.ui.words.words}
     */
    public Texts(String bundleName) {
        this.bundle = ResourceBundle.getBundle(bundleName, java.util.Locale.ROOT);
    }

    /**
     * Says a sentence.
     *
     * @param key its key
     * @param arguments what its places take
     * @return the sentence
     * @throws java.util.MissingResourceException if the bundle has no such key
     */
    public String say(String key, Object... arguments) {
        Matcher places = PLACE.matcher(bundle.getString(key));
        StringBuilder said = new StringBuilder();
        while (places.find()) {
            int number = Integer.parseInt(places.group(1));
            if (number >= arguments.length) {
                throw new IllegalArgumentException("\"" + key + "\" has a place {" + number + "} but only "
                        + arguments.length + " arguments came");
            }
            places.appendReplacement(said, Matcher.quoteReplacement(String.valueOf(arguments[number])));
        }
        return places.appendTail(said).toString();
    }

    /**
     * Lists the keys.
     *
     * @return all keys, in order
     */
    public Set<String> keys() {
        return new TreeSet<>(bundle.keySet());
    }
}

// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.text;

import com.ibm.icu.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences of one resource bundle in one language. The file without a language in its name is English, and serves
 * every language that has no file of its own.
 *
 * <p>A place such as {@code {0}} takes the argument of that number. A plural is written in the syntax of ICU's message
 * format, {@code {0, plural, one{# mark} other{# marks}}}. Apostrophes and percent signs are written as they are.
 */
public final class Texts {

    /** Name of the bundle with the names of the kinds of event, by their ids. */
    public static final String KINDS = "cablewright.lessons.text.kinds";

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
    private static final Pattern TYPED_PLACE = Pattern.compile("\\{\\d\\s*,");

    private final String bundleName;
    private final Locale locale;
    private final ResourceBundle bundle;

    /**
     * Opens a bundle.
     *
     * @param bundleName full name of the bundle, such as {@code cablewright.ui.words.words}
     * @param locale the language that is asked for; {@link Locale#ROOT} for English
     */
    public Texts(String bundleName, Locale locale) {
        this.bundleName = bundleName;
        this.locale = locale;
        this.bundle =
                ResourceBundle.getBundle(bundleName, locale, Control.getNoFallbackControl(Control.FORMAT_PROPERTIES));
    }

    /**
     * Opens another bundle in the same language.
     *
     * @param otherBundleName full name of the other bundle
     * @return its sentences
     */
    public Texts sibling(String otherBundleName) {
        return otherBundleName.equals(bundleName) ? this : new Texts(otherBundleName, locale);
    }

    /** The language that was asked for. */
    public Locale locale() {
        return locale;
    }

    /** The sentences as a resource bundle, for libraries that read one. */
    public ResourceBundle bundle() {
        return bundle;
    }

    /**
     * Makes a sentence.
     *
     * @param key its key
     * @param arguments what its places take; a number where a plural depends on it
     * @return the sentence
     * @throws java.util.MissingResourceException if the bundle has no such key
     * @throws IllegalArgumentException if the sentence has a place for which there is no argument
     */
    public String say(String key, Object... arguments) {
        String pattern = bundle.getString(key);
        checkPlaces(key, pattern, arguments.length);
        return TYPED_PLACE.matcher(pattern).find() ? formatted(pattern, arguments) : filled(pattern, arguments);
    }

    private static void checkPlaces(String key, String pattern, int count) {
        Matcher places = Pattern.compile("\\{(\\d)[,}]").matcher(pattern);
        while (places.find()) {
            if (Integer.parseInt(places.group(1)) >= count) {
                throw new IllegalArgumentException("\"" + key + "\" has a place {" + places.group(1) + "} but only "
                        + count + " arguments were given");
            }
        }
    }

    private static String filled(String pattern, Object... arguments) {
        Matcher places = PLACE.matcher(pattern);
        StringBuilder sentence = new StringBuilder();
        while (places.find()) {
            Object argument = arguments[Integer.parseInt(places.group(1))];
            places.appendReplacement(sentence, Matcher.quoteReplacement(String.valueOf(argument)));
        }
        return places.appendTail(sentence).toString();
    }

    /** The plural rules are those of the language that was found, which may be English where another was asked for. */
    private String formatted(String pattern, Object... arguments) {
        Locale found = bundle.getLocale().equals(Locale.ROOT) ? Locale.ENGLISH : bundle.getLocale();
        return new MessageFormat(pattern, found).format(arguments);
    }

    /**
     * Returns whether there is a sentence.
     *
     * @param key its key
     * @return whether the bundle has it, in this language or in English
     */
    public boolean has(String key) {
        return bundle.containsKey(key);
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

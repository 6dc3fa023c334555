/**
 * Sentences by key, from one resource bundle a package and one file a language.
 *
 * <p>Plural forms are chosen by ICU4J, since {@link java.text.ChoiceFormat} knows numbers but not the plural rules of
 * languages. Loading it takes about 0.1 s, so only sentences that have a plural in them use it.
 */
package cablewright.lessons.text;

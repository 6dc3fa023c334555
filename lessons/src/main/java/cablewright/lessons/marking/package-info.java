/**
 * Marks attempts. What can be seen is demanded, flags are matched to events so as to give the trainee the most, and the
 * answer is a tree of typed findings with numbers; sentences are made by the screens.
 */
package cablewright.lessons.marking;

/** What is begun and not handed in yet: flags that may not say what they are, settings, and where one left off. */
package cablewright.lessons.exercise.draft;

/** Files that must not be lost: saved whole or not at all, or only ever appended to, by several programs at once. */
package cablewright.lessons.file;

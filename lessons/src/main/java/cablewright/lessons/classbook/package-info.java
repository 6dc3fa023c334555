/** What trainees did: a log for each that only ever grows, its exports, and what a class shows when they are put together. */
package cablewright.lessons.classbook;

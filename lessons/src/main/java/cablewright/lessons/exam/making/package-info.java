/** Makes sealed papers from lessons, and opens their sealed part again for the examiner. */
package cablewright.lessons.exam.making;

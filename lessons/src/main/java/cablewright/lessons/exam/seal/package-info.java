/** Keys of examiners, and sealing in the open age format (age-encryption.org/v1). Knows nothing of exams. */
package cablewright.lessons.exam.seal;

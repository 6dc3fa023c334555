/**
 * Exams that can be trusted: a paper that holds no answer, answers that can't be changed unseen, a class marked in one step.
 *
 * <p><b>Who has what.</b> The examiner has a key pair ({@code exam.seal}). The paper ({@code exam.paper}) goes to the
 * trainees; in clear it holds brief, record, permitted settings and, for each end, what the port shows on a grid of damped
 * complex frequencies. Cable, answers, explanations and hints are sealed to the examiner's public key. A sitting
 * ({@code exam.sitting}) ends in answers that are sealed to the same key and bound to the paper by its SHA-256. The examiner
 * opens and marks them ({@code exam.result}).
 *
 * <h2>Threat model</h2>
 *
 * <p><b>What sealing protects.</b>
 *
 * <ul>
 *   <li>Who has the paper but not the key can't read the cable, the answers, the explanations or the hints: they are
 *       encrypted in the open age format (X25519, ChaCha20-Poly1305).
 *   <li>Nothing in clear leads back to them. Names, order and noise are drawn anew from the system's source of randomness for
 *       each paper; the sealed part is padded to a power of two; the grid follows from the permitted settings, not from the
 *       cable; every response of the same settings has the same length.
 *   <li>Answers can't be read on their way, and a changed or shortened file does not open. A paper that was changed has
 *       another SHA-256, so answers to it are set aside as answers to another paper.
 *   <li>A trainee can show which answers were handed in: the receipt is a short code of the sealed file, and the report of
 *       marks states it.
 *   <li>Putting the clock of the machine back during a run gains no time.
 * </ul>
 *
 * <p><b>What it can't protect.</b>
 *
 * <ul>
 *   <li>Two heads at one screen, a telephone, or somebody else in the trainee's seat: that takes an invigilator. Answers carry
 *       a name, not a proof of identity, and who has the paper can hand in answers in any name.
 *   <li>A person who rebuilds the cable by fitting the trace. The response in the paper is free of noise, as it must be
 *       for live settings; with a solver of one's own it shows more than the screen does.
 *   <li>Exercises that are not secret. A lesson that trainees have, or an exercise drawn from a seed that can be guessed
 *       (below 2<sup>40</sup>, say), is found again by its brief and record. Draw exams from random seeds of 64 bits.
 *   <li>A trainee's own machine. The program and the file of a sitting can be changed there, and a run can be stopped, the
 *       clock put back and the run taken up; time is honest only where somebody watches. Jumps of the clock are noted in the
 *       answers.
 *   <li>A stolen key opens everything that was ever sealed to it; a lost key opens nothing any more, not for anybody. Keep a
 *       backup under a passphrase, and make a new key for each examination period.
 * </ul>
 */
package cablewright.lessons.exam;

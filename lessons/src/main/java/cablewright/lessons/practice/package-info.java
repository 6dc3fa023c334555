/** Practice that adapts: what a trainee can do, what to ask next, and when to ask it again. */
package cablewright.lessons.practice;

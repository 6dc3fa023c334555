/**
 * Parameter studies: the same question asked of a cable over a grid or a seeded random sample of parameters, row by row, in
 * shards that merge to the same bytes whatever their number.
 */
package cablewright.lessons.study;

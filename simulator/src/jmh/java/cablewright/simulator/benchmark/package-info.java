/**
 * How long the hot loops take. Not built by default: {@code mvn -q -Pbenchmark -DskipTests -pl simulator verify} builds
 * and runs all of them, with {@code -Dbenchmarks=REGEX} only those whose name fits.
 */
package cablewright.simulator.benchmark;

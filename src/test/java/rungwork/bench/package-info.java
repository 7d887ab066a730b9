/**
 * How long things take: JMH benchmarks of what studies repeat by the hundred thousand.
 *
 * <p>{@code mvn -q verify -Pbench} runs them, without the tests, and writes {@code
 * target/bench.json}. The same ladder in numpy stands in {@code src/bench/python/ladder.py}.
 * Figures of record stand in {@code docs/benchmarks.md}.
 */
package rungwork.bench;

package rungwork.study;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomDataGenerator;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * Numbers between 0 and 1 for many settings of several inputs, the same for the same seed.
 *
 * @param count how many settings
 * @param seed any number
 */
record Draw(int count, long seed) {
  /**
   * Draws.
   *
   * @param inputs how many numbers a setting needs
   * @param evenly whether each input's numbers lie one in each of as many equal parts
   * @return for each input and setting a number above 0 and below 1
   */
  double[][] parts(int inputs, boolean evenly) {
    RandomGenerator random = new MersenneTwister(seed);
    double[][] parts = new double[inputs][];
    for (int i = 0; i < inputs; i++) {
      parts[i] = evenly ? stratified(random) : independent(random);
    }
    return parts;
  }

  private double[] independent(RandomGenerator random) {
    return IntStream.range(0, count).mapToDouble(s -> inside(random.nextDouble())).toArray();
  }

  private double[] stratified(RandomGenerator random) {
    int[] order = new RandomDataGenerator(random).nextPermutation(count, count);
    return Arrays.stream(order)
        .mapToDouble(stratum -> inside((stratum + random.nextDouble()) / count))
        .toArray();
  }

  private static double inside(double part) {
    return Math.min(Math.max(part, Double.MIN_NORMAL), Math.nextDown(1.0));
  }
}

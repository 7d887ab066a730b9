package rungwork.fuzz;

import java.util.List;
import java.util.Random;

/** Values that nobody should give. */
final class Hostile {
  private static final double[] NUMBERS = {
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    0,
    -0.0,
    -1,
    -1e-3,
    1e-300,
    -1e-300,
    1e300,
    -1e300,
    Double.MIN_VALUE,
    Double.MAX_VALUE,
    1e-9,
    1e9,
    1e20
  };

  private static final int[] COUNTS = {0, -1, 1, 2, Integer.MIN_VALUE, Integer.MAX_VALUE, 7};

  private static final List<String> WORDS =
      List.of(
          "",
          " ",
          "\t\n",
          "nobody",
          "<script>alert(\"x\")</script> & 'y'",
          "]]>--><!--",
          "a\nb\r\nc",
          "\u202egnp.exe \u200f\u200b",
          "\uD83D\uDE97\uD83D\uDE97",
          "\uD83D",
          "\u0000\u0001\u001b[31m",
          "x".repeat(10_000),
          "%s %d {N} ${x} \\",
          "1e999 mm",
          "1/0 in",
          "-",
          "½ in",
          "٣ mm");

  private Hostile() {}

  static double number(Random random) {
    return NUMBERS[random.nextInt(NUMBERS.length)];
  }

  /** A units library holds no other. */
  static double finite(Random random) {
    double number = number(random);
    return Double.isFinite(number) ? number : 1e300;
  }

  static int count(Random random) {
    return COUNTS[random.nextInt(COUNTS.length)];
  }

  static String word(Random random) {
    return WORDS.get(random.nextInt(WORDS.size()));
  }
}

package rungwork.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rungwork.quantity.Units;
import rungwork.study.Candidate;
import rungwork.study.Screening;
import rungwork.study.Screening.Field;
import rungwork.study.Screening.Limits;

/**
 * A screening of a million ladders and more on all cores, from catalogues, as a user calls it: the
 * ladder, vehicle and 8 events of {@link ScreeningBenchmark}. Prints how long it takes and the most
 * heap that was in use. With a number as its argument, about so many ladders instead.
 *
 * <pre>
 *   MAVEN_OPTS=-Xmx1g mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *       -Dexec.mainClass=rungwork.bench.MillionLadders
 * </pre>
 */
public final class MillionLadders {
  private static final double[] WALLS = {2, 2.5, 3, 4};

  /** Crossmembers of three stations. */
  private static final int CROSSMEMBERS = 24 * 24 * 24;

  private MillionLadders() {}

  /**
   * Screens.
   *
   * @param args how many ladders at least; a million where nothing is said
   */
  public static void main(String[] args) {
    int least = args.length == 0 ? 1_000_000 : Integer.parseInt(args[0]);
    Field field = field(least);
    long start = System.nanoTime();
    Screening screening = Screening.of(field, Limits.CHECKS, (done, total, left) -> {});
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "%,d ladders in %.1f s on %d cores, %.0f µs of a core each; most heap in use %d MiB of"
            + " %d%n",
        screening.screened(),
        seconds,
        Runtime.getRuntime().availableProcessors(),
        1e6 * seconds * Runtime.getRuntime().availableProcessors() / screening.screened(),
        mostHeap() >> 20,
        Runtime.getRuntime().maxMemory() >> 20);
    System.out.println(screening.line(Units.METRIC));
  }

  private static Field field(int least) {
    List<Candidate> crossmembers = new ArrayList<>();
    for (int side = 30; side <= 80; side += 10) {
      for (double wall : WALLS) {
        crossmembers.add(Candidate.of(ScreeningBenchmark.tube(side, side, wall)));
      }
    }
    List<Candidate> rails = new ArrayList<>();
    int count = (least + CROSSMEMBERS - 1) / CROSSMEMBERS;
    for (int i = 0; i < count; i++) {
      double height = 80 + 4 * (i / WALLS.length);
      rails.add(Candidate.of(ScreeningBenchmark.tube(height, 60, 1 + WALLS[i % WALLS.length])));
    }
    return new Field(
        ScreeningBenchmark.vehicle(),
        ScreeningBenchmark.ladder(),
        ScreeningBenchmark.events(),
        rails,
        Map.of("station 1", crossmembers, "station 2", crossmembers, "station 3", crossmembers));
  }

  private static long mostHeap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .map(MemoryPoolMXBean::getPeakUsage)
        .mapToLong(usage -> usage.getUsed())
        .sum();
  }
}

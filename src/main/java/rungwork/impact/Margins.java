package rungwork.impact;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.quantity.Kind;

/**
 * By how much parts behind are stronger than those in front.
 *
 * @param frame the frame's own parts, of which each run is known
 */
record Margins(List<FramePart> frame) {
  /** Ratios beyond this say no more [1]. */
  private static final double MOST = 1000;

  /** Of two parts of the frame in the same run, of any other by the ends of their ranges. */
  Range of(Part front, Part behind) {
    Range first = known(front);
    Range second = known(behind);
    Optional<FramePart> a = row(front);
    Optional<FramePart> b = row(behind);
    if (a.isEmpty() || b.isEmpty()) {
      return new Range(
          Kind.RATIO, over(second.low(), first.high()), over(second.high(), first.low()));
    }
    double[] low = ratios(b.get(), CrushTube.Strength.LOW, a.get(), CrushTube.Strength.HIGH);
    double[] high = ratios(b.get(), CrushTube.Strength.HIGH, a.get(), CrushTube.Strength.LOW);
    return new Range(
        Kind.RATIO,
        IntStream.range(0, low.length).mapToDouble(i -> low[i]).min().orElseThrow(),
        IntStream.range(0, high.length).mapToDouble(i -> high[i]).max().orElseThrow());
  }

  private static double[] ratios(
      FramePart behind, CrushTube.Strength ofBehind, FramePart front, CrushTube.Strength ofFront) {
    double[] above = behind.first(ofBehind);
    double[] below = front.first(ofFront);
    return IntStream.range(0, above.length).mapToDouble(i -> over(above[i], below[i])).toArray();
  }

  /** A ratio, cut where it says no more; what gives way standing is below everything. */
  private static double over(double behind, double front) {
    return behind >= MOST * front ? MOST : behind / front;
  }

  private static Range known(Part part) {
    return part.first()
        .orElseThrow(
            () -> new ModelException("part " + part.name() + " is not checked; it has no margin"));
  }

  private Optional<FramePart> row(Part part) {
    return frame.stream().filter(row -> row.name().equals(part.name())).findFirst();
  }
}

package rungwork.impact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwork.fault.ModelException;

/**
 * Parts one behind the other that carry the same force: the weaker crushes first. Their forces must
 * rise, or it would be ambiguous which of them crushes.
 *
 * @param parts from the front to the rear
 * @param curve all of them as one; it ends where the weakest end would be passed
 * @param shares the crush of each part [m] at each point of the curve: {@code shares[point][part]}
 */
record Stack(List<CrushCurve> parts, CrushCurve curve, double[][] shares) {
  private static final double ROUNDING = 1e-12;

  static Stack of(List<CrushCurve> parts) {
    if (parts.size() > 1) {
      parts.forEach(Stack::refuseFall);
    }
    return parts.size() == 1 ? alone(parts.get(0)) : new Making(parts).stack();
  }

  private static Stack alone(CrushCurve part) {
    double[][] shares = new double[part.points().size()][];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = new double[] {part.points().get(i).crush()};
    }
    return new Stack(List.of(part), part, shares);
  }

  private static void refuseFall(CrushCurve part) {
    part.fall()
        .ifPresent(
            where -> {
              throw new ModelException(
                  "the force of "
                      + part.name()
                      + " falls "
                      + where
                      + "; one behind the other it would be ambiguous which part crushes: put a"
                      + " front mass between them");
            });
  }

  /** The crush of one part [m] when all together are crushed by so much. */
  double share(int part, double crush) {
    List<CrushCurve.Point> points = curve.points();
    for (int i = 1; i < points.size(); i++) {
      double end = points.get(i).crush();
      if (crush <= end) {
        double start = points.get(i - 1).crush();
        double along = (Math.max(0, crush) - start) / (end - start);
        return shares[i - 1][part] + along * (shares[i][part] - shares[i - 1][part]);
      }
    }
    double beyond = part == weakestEnd() ? crush - curve.last().crush() : 0;
    return shares[shares.length - 1][part] + beyond;
  }

  /** The part that goes on alone when the end is passed. */
  private int weakestEnd() {
    int at = 0;
    for (int i = 1; i < parts.size(); i++) {
      at = parts.get(i).last().force() < parts.get(at).last().force() ? i : at;
    }
    return at;
  }

  /** Builds a stack level by level. */
  private static final class Making {
    private final List<CrushCurve> parts;
    private final List<CrushCurve.Point> points = new ArrayList<>();
    private final List<double[]> shares = new ArrayList<>();

    Making(List<CrushCurve> parts) {
      this.parts = List.copyOf(parts);
    }

    Stack stack() {
      double end = parts.stream().mapToDouble(part -> part.last().force()).min().orElseThrow();
      TreeSet<Double> levels = new TreeSet<>();
      parts.forEach(part -> part.points().forEach(p -> levels.add(Math.min(end, p.force()))));
      for (double level : levels) {
        add(level, parts.stream().mapToDouble(part -> part.reaching(level)).toArray());
        add(level, parts.stream().mapToDouble(part -> part.leaving(level)).toArray());
      }
      double soft = 1 / parts.stream().mapToDouble(part -> 1 / part.unloading()).sum();
      String name = parts.stream().map(CrushCurve::name).collect(Collectors.joining(" before "));
      CrushCurve curve = new CrushCurve(name, points, Math.max(soft, CrushCurve.steepest(points)));
      return new Stack(parts, curve, shares.toArray(double[][]::new));
    }

    private void add(double level, double[] crushes) {
      double crush = Arrays.stream(crushes).sum();
      if (points.isEmpty() || crush > points.get(points.size() - 1).crush() + ROUNDING) {
        points.add(new CrushCurve.Point(crush, level, label(crushes, level)));
        shares.add(crushes);
      }
    }

    private String label(double[] crushes, double level) {
      Stream.Builder<String> labels = Stream.builder();
      for (int i = 0; i < crushes.length; i++) {
        double at = crushes[i];
        parts.get(i).points().stream()
            .filter(p -> p.crush() == at && p.force() == level && !p.label().isEmpty())
            .forEach(p -> labels.add(p.label()));
      }
      return labels
          .build()
          .distinct()
          .sorted(Comparator.naturalOrder())
          .collect(Collectors.joining(", "));
    }
  }
}

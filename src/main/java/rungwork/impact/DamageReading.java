package rungwork.impact;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rungwork.frame.Frame;
import rungwork.solve.Displacement;
import rungwork.solve.Pushover;
import rungwork.vehicle.Joints;

/** Reads measured damage against the runs of one scene. */
final class DamageReading {
  /** Crush up to which a mechanism is followed: beyond, motions are not small at all [m]. */
  private static final double FAR = 0.3;

  private static final String NOT_FOUND =
      "no run leaves all of this behind, not even far beyond its mechanism; another hit, more than"
          + " one, or walls that folded";

  /** Steps to there. */
  private static final int STEPS = 150;

  private final SeenDamage damage;
  private final Collapse scene;
  private final Frame frame;

  DamageReading(SeenDamage damage, Collapse scene) {
    this.damage = damage;
    this.scene = scene;
    frame = scene.ladder().frame(Joints.RIGID);
  }

  SeenDamage.Explanation explanation() {
    List<SeenDamage.Reading> runs =
        scene.paths().stream().map(this::reading).flatMap(Optional::stream).toList();
    return new SeenDamage.Explanation(scene, runs, runs.isEmpty() ? NOT_FOUND : "");
  }

  /** The part of a path on which what is left agrees with all that was measured. */
  private Optional<SeenDamage.Reading> reading(Collapse.Path path) {
    double[] crush = steps(path);
    List<double[]> sets = Arrays.stream(crush).mapToObj(at -> left(path, at)).toList();
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < crush.length; i++) {
      double[] part = agreeing(sets.get(i - 1), sets.get(i));
      if (part[0] <= part[1]) {
        double step = crush[i] - crush[i - 1];
        from = Math.min(from, crush[i - 1] + part[0] * step);
        to = Math.max(to, crush[i - 1] + part[1] * step);
      }
    }
    return from <= to ? Optional.of(reading(path, from, to)) : Optional.empty();
  }

  /** Crushes at which the sets are looked at: all corners, and many between and beyond them. */
  private static double[] steps(Collapse.Path path) {
    DoubleStream even = IntStream.rangeClosed(0, STEPS).mapToDouble(i -> FAR * i / STEPS);
    DoubleStream corners =
        path.pushed().pushover().corners().stream()
            .mapToDouble(corner -> corner.travel() / path.pushed().unit());
    return DoubleStream.concat(even, corners).sorted().distinct().toArray();
  }

  private static SeenDamage.Reading reading(Collapse.Path path, double from, double to) {
    return new SeenDamage.Reading(
        path,
        SeenDamage.Loads.between(path, from, to),
        from > path.crush(),
        opened(path, from),
        opened(path, to));
  }

  private static List<String> opened(Collapse.Path path, double crush) {
    return path.stages().stream()
        .filter(stage -> stage.reached().crush() <= crush)
        .flatMap(stage -> stage.opened().stream())
        .map(Collapse.Hinge::words)
        .distinct()
        .toList();
  }

  /** What a crush leaves behind when it is let go. */
  private double[] left(Collapse.Path path, double crush) {
    Map<String, Displacement> known = new HashMap<>();
    PermanentSet.Bent bent =
        new PermanentSet.Bent(
            scene.ladder(),
            frame,
            node -> known.computeIfAbsent(node, any -> left(path, any, crush)));
    return damage.measured().stream()
        .mapToDouble(one -> one.how().of(one.features(), bent))
        .toArray();
  }

  private static Displacement left(Collapse.Path path, String node, double crush) {
    Pushover pushover = path.pushed().pushover();
    double travel = crush * path.pushed().unit();
    List<Pushover.Corner> corners = pushover.corners();
    int next = 1;
    while (next < corners.size() && corners.get(next).travel() < travel) {
      next++;
    }
    Pushover.Corner before = corners.get(next - 1);
    double step = travel - before.travel();
    Displacement moved = pushover.atCorner(next - 1, node);
    if (next == corners.size()) {
      return moved
          .plus(pushover.collapsing(node).times(step))
          .plus(pushover.elastic(node).times(-before.factor()));
    }
    Pushover.Corner after = corners.get(next);
    double part = step / (after.travel() - before.travel());
    double factor = before.factor() + part * (after.factor() - before.factor());
    return moved
        .times(1 - part)
        .plus(pushover.atCorner(next, node).times(part))
        .plus(pushover.elastic(node).times(-factor));
  }

  /** The part of a straight stretch, 0 to 1, on which every set is within its tolerance. */
  private double[] agreeing(double[] start, double[] end) {
    double from = 0;
    double to = 1;
    for (int i = 0; i < start.length; i++) {
      SeenDamage.Measured one = damage.measured().get(i);
      double[] part = within(one.value() - one.tolerance(), start[i], end[i], true);
      double[] other = within(one.value() + one.tolerance(), start[i], end[i], false);
      from = Math.max(from, Math.max(part[0], other[0]));
      to = Math.min(to, Math.min(part[1], other[1]));
    }
    return new double[] {from, to};
  }

  /** Where a straight line lies above a level, or below it. */
  private static double[] within(double level, double start, double end, boolean above) {
    double first = above ? start - level : level - start;
    double last = above ? end - level : level - end;
    if (first >= 0 && last >= 0) {
      return new double[] {0, 1};
    }
    if (first < 0 && last < 0) {
      return new double[] {1, 0};
    }
    double crossing = first / (first - last);
    return first >= 0 ? new double[] {0, crossing} : new double[] {crossing, 1};
  }
}

package rungwork.impact;

import static rungwork.quantity.Quantities.g;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rungwork.fault.SolveException;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;
import rungwork.quantity.Kind;
import rungwork.solve.Pushover;
import rungwork.vehicle.Balance;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Vehicle;

/**
 * Pushes a vehicle's frame to its collapse: at both strengths, with every assumption about its
 * joints, with every way in which masses on several mounts may be shared.
 */
final class CollapseRuns {
  /** Forces that differ by less than this part are one: rounding of the steps [1]. */
  private static final double SAME = 1e-6;

  private final Ladder ladder;
  private final CollapseAssumptions assumed;
  private final Balance hit;
  private final List<Collapse.Path> paths = new ArrayList<>();
  private final List<String> failed = new ArrayList<>();

  CollapseRuns(Vehicle vehicle, Ladder ladder, Event.Hit where, CollapseAssumptions assumed) {
    this.ladder = ladder;
    this.assumed = assumed;
    hit = Balance.of(Event.frontalImpact(g(1), where), vehicle, ladder);
    for (CrushTube.Strength strength : CrushTube.Strength.values()) {
      FrameStrength strengths = new FrameStrength(strength, assumed.strainRate());
      for (Joints joints : ladder.joints()) {
        for (Balance.Growth growth : hit.growing()) {
          run(strengths, growth.standing(), new Collapse.Case(strength, joints, growth.impact()));
        }
      }
    }
  }

  /** A frame with let-go joints may be none; with rigid ones it must stand. */
  private void run(FrameStrength strengths, LoadCase standing, Collapse.Case of) {
    if (Thread.currentThread().isInterrupted()) {
      throw new SolveException("the collapse was interrupted before " + of.words());
    }
    Frame frame = ladder.frame(of.joints());
    try {
      Pushover pushover = Pushover.unsupported(frame, strengths, standing, of.growing());
      paths.add(new CollapseCourse(ladder, frame, pushover).path(of, unit(), assumed));
    } catch (SolveException reason) {
      if (of.joints().equals(Joints.RIGID)) {
        throw reason;
      }
      failed.add("Not computed: " + of.words() + ": " + reason.getMessage() + ".");
    }
  }

  /** The force of 1 g [N]. */
  private double unit() {
    return hit.forces().stream().mapToDouble(force -> -force.wrench().fx()).sum();
  }

  Balance hit() {
    return hit;
  }

  List<Collapse.Path> paths() {
    return paths;
  }

  /** A figure over all runs. */
  Range range(Kind kind, ToDoubleFunction<Collapse.Path> figure) {
    return Range.spanning(kind, paths.stream().mapToDouble(figure));
  }

  /** The run of a strength with rigid joints and masses on all their mounts. */
  Collapse.Path rigid(CrushTube.Strength strength) {
    return of(strength).findFirst().orElseThrow();
  }

  /** The weakest run at low strength, the strongest at high; of several, that made first. */
  Collapse.Path deciding(CrushTube.Strength strength) {
    DoubleStream forces = of(strength).mapToDouble(Collapse.Path::collapse);
    double end = (strength == CrushTube.Strength.LOW ? forces.min() : forces.max()).orElseThrow();
    return of(strength)
        .filter(path -> Math.abs(path.collapse() - end) <= SAME * end)
        .findFirst()
        .orElseThrow();
  }

  private Stream<Collapse.Path> of(CrushTube.Strength strength) {
    return paths.stream().filter(path -> path.of().strength() == strength);
  }

  List<String> failed() {
    return failed;
  }
}

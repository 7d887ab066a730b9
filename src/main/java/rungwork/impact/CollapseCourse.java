package rungwork.impact;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.solve.Pushover;
import rungwork.vehicle.Ladder;

/** One pushover of a ladder, put into a builder's words. */
final class CollapseCourse {
  private static final double G = Scale.G.inSi();

  /** Stages whose loads differ by less than this part are one: rounding [1]. */
  private static final double SAME = 1e-6;

  /** Corners closer than this part are one [1]. */
  private static final double ROUNDING = 1e-9;

  private final Ladder ladder;
  private final Frame frame;
  private final Pushover pushover;

  CollapseCourse(Ladder ladder, Frame frame, Pushover pushover) {
    this.ladder = ladder;
    this.frame = frame;
    this.pushover = pushover;
  }

  /**
   * The path of a run.
   *
   * @param of the run
   * @param unit the force of 1 g [N]
   * @param assumed hardening
   * @return the path
   */
  Collapse.Path path(Collapse.Case of, double unit, CollapseAssumptions assumed) {
    List<Collapse.Stage> stages = new ArrayList<>();
    for (int i = 0; i < pushover.stages().size(); i++) {
      Collapse.Stage stage = stage(i, unit);
      int last = stages.size() - 1;
      if (last >= 0 && same(stages.get(last), stage)) {
        stages.set(last, joined(stages.get(last), stage));
      } else {
        stages.add(stage);
      }
    }
    List<Collapse.Reached> corners = corners(unit);
    double slope = hardening(unit) * assumed.hardening();
    return new Collapse.Path(of, stages, corners, new Collapse.Pushed(pushover, unit, slope));
  }

  private List<Collapse.Reached> corners(double unit) {
    List<Collapse.Reached> corners = new ArrayList<>();
    for (Pushover.Corner corner : pushover.corners()) {
      Collapse.Reached reached = reached(corner, unit);
      int last = corners.size() - 1;
      if (last < 0 || reached.crush() > corners.get(last).crush() * (1 + ROUNDING)) {
        corners.add(reached);
      }
    }
    return corners;
  }

  private static Collapse.Reached reached(Pushover.Corner at, double unit) {
    return new Collapse.Reached(
        at.factor() * G, at.factor() * unit, at.travel() / unit, at.energy());
  }

  private static boolean same(Collapse.Stage before, Collapse.Stage now) {
    return now.reached().force() - before.reached().force() <= SAME * now.reached().force()
        && now.reached().crush() - before.reached().crush() <= SAME * now.reached().crush();
  }

  /** Two stages at one load: what opens and locks there, or locks and opens, did neither. */
  static Collapse.Stage joined(Collapse.Stage before, Collapse.Stage now) {
    return new Collapse.Stage(
        now.number(),
        now.reached(),
        now.hinges(),
        both(before.opened(), before.locked(), now.opened(), now.locked()),
        both(before.locked(), before.opened(), now.locked(), now.opened()));
  }

  private static List<Collapse.Hinge> both(
      List<Collapse.Hinge> first,
      List<Collapse.Hinge> undone,
      List<Collapse.Hinge> then,
      List<Collapse.Hinge> undoing) {
    return Stream.concat(
            first.stream().filter(hinge -> !undoing.contains(hinge)),
            then.stream().filter(hinge -> !undone.contains(hinge)))
        .toList();
  }

  private Collapse.Stage stage(int number, double unit) {
    Pushover.Stage stage = pushover.stages().get(number);
    Pushover.Corner at = new Pushover.Corner(stage.factor(), stage.travel(), stage.energy());
    Collapse.Reached reached = reached(at, unit);
    return new Collapse.Stage(
        number, reached, hinges(stage.hinges()), hinges(stage.opened()), hinges(stage.locked()));
  }

  private List<Collapse.Hinge> hinges(List<Pushover.Place> places) {
    HingeNames names = new HingeNames(ladder);
    return places.stream()
        .map(place -> new Collapse.Hinge(names.words(place, middle(place)), place))
        .toList();
  }

  private double middle(Pushover.Place place) {
    Beam beam = frame.beam(place.beam());
    return (frame.startOf(beam).x() + frame.endOf(beam).x()) / 2;
  }

  /**
   * What hardening as stiff as the elastic beam would add to the force, over the crush: Σ over the
   * hinges of (E A u² + E Iy θy² + E Iz θz² + G It φ²)/Lp, each for a metre of crush, with the
   * hinge as long as its section is deep (common practice, no source) [N/m].
   */
  private double hardening(double unit) {
    List<Pushover.Stage> all = pushover.stages();
    return all.get(all.size() - 1).hinges().stream().mapToDouble(this::stiffness).sum()
        * unit
        * unit;
  }

  private double stiffness(Pushover.Place place) {
    Beam beam = frame.beam(place.beam());
    Pushover.Yielding way = pushover.yielding(place);
    double youngs = beam.material().elasticity().youngsModulus();
    double shear = beam.material().elasticity().shearModulus();
    var p = beam.section().properties();
    double sum =
        youngs
                * (p.area() * way.stretch() * way.stretch()
                    + p.iy() * way.turnY() * way.turnY()
                    + p.iz() * way.turnZ() * way.turnZ())
            + shear * p.it() * way.twist() * way.twist();
    return sum / depth(beam);
  }

  private static double depth(Beam beam) {
    return beam.section().points().stream()
            .mapToDouble(point -> Math.max(Math.abs(point.y()), Math.abs(point.z())))
            .max()
            .orElseThrow()
        * 2;
  }
}

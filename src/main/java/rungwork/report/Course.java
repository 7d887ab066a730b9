package rungwork.report;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.solve.InternalForces;

/**
 * One internal force along a run.
 *
 * @param name such as {@code Mz}
 * @param meaning what stands above the line
 * @param kind force or moment
 * @param run the run
 * @param which picks the force out of a cut's six, signed as it is known
 * @param upwards 1 where positive is drawn upwards, −1 where downwards
 */
record Course(
    String name,
    String meaning,
    Kind kind,
    Run run,
    ToDoubleFunction<InternalForces> which,
    int upwards) {
  /** Smaller than this part of the run's largest force is rounding [1]. */
  private static final double ROUNDING = 1e-9;

  private static final int DIGITS = 3;

  /** Frame action (N, Vy, Mz), then grillage action (T, Vz, My). */
  static List<Course> all(Run run) {
    Side y = Side.of(run.y());
    Side z = Side.of(run.z());
    return List.of(
        new Course("N", "tension", Kind.FORCE, run, InternalForces::n, 1),
        new Course("Vy", "positive", Kind.FORCE, run, InternalForces::vy, 1),
        moment("Mz", y, run, InternalForces::mz, -y.sign()),
        new Course("T", "positive", Kind.MOMENT, run, InternalForces::t, 1),
        new Course("Vz", "positive", Kind.FORCE, run, InternalForces::vz, 1),
        moment("My", z, run, InternalForces::my, z.sign()));
  }

  private static Course moment(
      String name, Side side, Run run, ToDoubleFunction<InternalForces> which, int upwards) {
    return new Course(name, "tension on the " + side.word(), Kind.MOMENT, run, which, upwards);
  }

  double at(Run.Cut cut) {
    double value = which.applyAsDouble(cut.forces());
    return Math.abs(value) <= ROUNDING * scale() ? 0 : value;
  }

  /** The first cut where it is highest. */
  Run.Cut highest() {
    double most = run.cuts().stream().mapToDouble(this::at).max().orElseThrow();
    return first(cut -> at(cut) >= most - ROUNDING * scale());
  }

  /** The first cut where it is lowest. */
  Run.Cut lowest() {
    double least = run.cuts().stream().mapToDouble(this::at).min().orElseThrow();
    return first(cut -> at(cut) <= least + ROUNDING * scale());
  }

  private Run.Cut first(Predicate<Run.Cut> wanted) {
    return run.cuts().stream().filter(wanted).findFirst().orElseThrow();
  }

  /** Its largest size, whatever the sign. */
  double largest() {
    return Math.max(Math.abs(at(highest())), Math.abs(at(lowest())));
  }

  /** Three digits; 0 for what would be none of the digits that the largest shows. */
  String number(Run.Cut cut, Units units) {
    Scale scale = units.scale(kind);
    double last = Math.pow(10, Math.floor(Math.log10(largest() / scale.inSi())) - DIGITS + 1);
    boolean nothing = Math.abs(at(cut)) / scale.inSi() < last / 2;
    return nothing ? "0" : scale.number(at(cut), DIGITS);
  }

  /** The largest force of the run, or the largest moment over the run's length. */
  private double scale() {
    double largest = 0;
    for (Run.Cut cut : run.cuts()) {
      InternalForces f = cut.forces();
      double force = Math.max(Math.abs(f.n()), Math.max(Math.abs(f.vy()), Math.abs(f.vz())));
      double moment = Math.max(Math.abs(f.t()), Math.max(Math.abs(f.my()), Math.abs(f.mz())));
      largest = Math.max(largest, Math.max(force, moment / run.length()));
    }
    return kind == Kind.MOMENT ? largest * run.length() : largest;
  }

  /** A side of a member in the vehicle's words; sign −1 when the direction points to its other. */
  private record Side(String word, int sign) {
    static Side of(double[] direction) {
      String[] words = {"front side", "left side", "top"};
      int axis = 0;
      for (int i = 1; i < 3; i++) {
        axis = Math.abs(direction[i]) > Math.abs(direction[axis]) ? i : axis;
      }
      return new Side(words[axis], direction[axis] < 0 ? -1 : 1);
    }
  }
}

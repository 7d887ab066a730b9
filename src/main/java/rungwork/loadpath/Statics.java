package rungwork.loadpath;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * Six equations of equilibrium for the upright and for each arm. Moments are divided by the
 * corner's size, so that every figure of the matrix is a bare number and its smallest singular
 * value σ means something: an unlucky load of 1 asks 1/σ of the members. The direction that goes
 * with it is the motion that they resist least (virtual work).
 */
final class Statics {
  private static final int SIX = 6;

  /**
   * Members that would have to take this many times the load take nothing: points are known to a
   * tenth of a millimetre in a corner of half a metre, and that alone moves σ by 1e-4.
   */
  private static final double LARGEST = 1e4;

  private final List<Reaction> reactions;
  private final List<Reaction.Given> given;
  private final List<String> bodies;
  private final Point about;
  private final double size;
  private final SingularValueDecomposition parts;

  Statics(List<SuspensionMember> members, Hub hub) {
    reactions = members.stream().flatMap(m -> m.reactions().forces().stream()).toList();
    given = members.stream().flatMap(m -> m.reactions().given().stream()).toList();
    bodies = new ArrayList<>(List.of(SuspensionMember.UPRIGHT));
    members.forEach(member -> member.reactions().body().ifPresent(bodies::add));
    about = hub.centre();
    double radius = about.distance(hub.contact());
    size = all().stream().mapToDouble(r -> r.at().distance(about)).reduce(radius, Math::max);
    parts = new SingularValueDecomposition(matrix());
  }

  List<Reaction> reactions() {
    return reactions;
  }

  List<String> bodies() {
    return bodies;
  }

  int equations() {
    return SIX * bodies.size();
  }

  /** How many times an unlucky load the members have to take; infinite for a mechanism. */
  double magnification() {
    double[] values = parts.getSingularValues();
    return 1 / values[values.length - 1];
  }

  boolean free() {
    return magnification() > LARGEST;
  }

  /**
   * The forces that hold the upright against a wrench about the wheel's middle, then those that
   * were given.
   */
  double[] solve(Wrench onUpright) {
    RealVector load = new ArrayRealVector(equations());
    double[] upright = new double[equations()];
    put(upright, 0, onUpright.times(-1));
    load = load.add(new ArrayRealVector(upright));
    for (Reaction.Given each : given) {
      load = load.subtract(new ArrayRealVector(column(each.reaction())).mapMultiply(each.force()));
    }
    double[] found = parts.getSolver().solve(load).toArray();
    double[] all = Arrays.copyOf(found, reactions.size() + given.size());
    for (int i = 0; i < given.size(); i++) {
      all[reactions.size() + i] = given.get(i).force();
    }
    return all;
  }

  /** The largest stated force [N]. */
  double given() {
    return given.stream().mapToDouble(each -> Math.abs(each.force())).max().orElse(0);
  }

  /** All reactions in the order of the forces: those found, then those given. */
  List<Reaction> all() {
    List<Reaction> all = new ArrayList<>(reactions);
    given.forEach(each -> all.add(each.reaction()));
    return all;
  }

  /** Fewer forces than equations leave columns of nothing, which show as a motion. */
  private RealMatrix matrix() {
    RealMatrix matrix = new Array2DRowRealMatrix(equations(), equations());
    for (int column = 0; column < Math.min(reactions.size(), equations()); column++) {
      matrix.setColumn(column, column(reactions.get(column)));
    }
    return matrix;
  }

  private double[] column(Reaction reaction) {
    Vector3D u = reaction.along();
    Wrench unit = Wrench.force(u.getX(), u.getY(), u.getZ()).moved(reaction.at(), about);
    double[] column = new double[equations()];
    put(column, bodies.indexOf(reaction.body()), unit);
    int other = bodies.indexOf(reaction.holders().get(0));
    if (other >= 0) {
      put(column, other, unit.times(-1));
    }
    return column;
  }

  private void put(double[] rows, int body, Wrench w) {
    double[] six = {w.fx(), w.fy(), w.fz(), w.mx() / size, w.my() / size, w.mz() / size};
    System.arraycopy(six, 0, rows, SIX * body, SIX);
  }

  /** The motion that the members resist least, in words; the upright by the name it goes by. */
  String leastResisted(String upright) {
    double[] motion = parts.getU().getColumn(equations() - 1);
    for (int body = 0; body < bodies.size(); body++) {
      Motion own = Motion.of(motion, SIX * body);
      if (own.amount() > Motion.NOTHING) {
        return own.words(bodies.get(body), upright);
      }
    }
    throw new IllegalStateException("a motion of unit length moves nothing");
  }

  /** How a body moves: its point at the wheel's middle, and its turning times the corner's size. */
  private record Motion(Vector3D slide, Vector3D turn) {
    /** Smaller parts of a motion of unit length are rounding. */
    private static final double NOTHING = 1e-6;

    private static final List<String> SLIDES =
        List.of("fore and aft movement", "sideways movement", "rise and fall");
    private static final List<String> TURNS = List.of("leaning", "winding-up", "steering");

    static Motion of(double[] motion, int from) {
      return new Motion(
          new Vector3D(motion[from], motion[from + 1], motion[from + 2]),
          new Vector3D(motion[from + 3], motion[from + 4], motion[from + 5]));
    }

    double amount() {
      return Math.hypot(slide.getNorm(), turn.getNorm());
    }

    /**
     * A body that turns about a line far from the wheel's middle moves there more than it turns.
     */
    String words(String body, String upright) {
      boolean slides = slide.getNorm() > turn.getNorm() / 2;
      String what = slides ? SLIDES.get(largest(slide)) : TURNS.get(largest(turn));
      return body.equals(SuspensionMember.UPRIGHT)
          ? what + " of the " + upright
          : "turning of arm " + body;
    }

    private static int largest(Vector3D vector) {
      double[] parts = vector.toArray();
      int largest = 0;
      for (int i = 1; i < parts.length; i++) {
        if (Math.abs(parts[i]) > Math.abs(parts[largest])) {
          largest = i;
        }
      }
      return largest;
    }
  }

  /** The sum of all forces on the frame, about the wheel's middle. */
  Wrench onFrame(double[] forces) {
    Wrench sum = Wrench.ZERO;
    List<Reaction> all = all();
    for (int i = 0; i < forces.length; i++) {
      Reaction reaction = all.get(i);
      if (!bodies.contains(reaction.holders().get(0))) {
        Vector3D f = reaction.along().scalarMultiply(-forces[i]);
        sum = sum.plus(Wrench.force(f.getX(), f.getY(), f.getZ()).moved(reaction.at(), about));
      }
    }
    return sum;
  }

  /** The largest part of a wrench that is left over, moments divided by the corner's size [N]. */
  double largest(Wrench w) {
    return Math.max(
        new Vector3D(w.fx(), w.fy(), w.fz()).getNorm(),
        new Vector3D(w.mx(), w.my(), w.mz()).getNorm() / size);
  }
}

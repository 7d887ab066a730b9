package rungwork.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;

/**
 * How many times its loads make a frame unstable, in its plane and out of it, by the normal forces
 * that the loads cause in first order.
 *
 * <p><b>No root is missed.</b> The critical loads below a trial load are counted, not searched for
 * among the signs of a determinant. The lowest lies where the count leaves zero, found by parting
 * the bounds down to rounding. Each beam is halved, so that its bow shows, and each half takes its
 * mean normal force.
 *
 * <p>A beam whose shear centre lies off its centroid bends out of the plane and twists at once; its
 * stiffness against warping is left out, so that its load is never too high ({@link
 * CriticalLoad#withoutWarping}).
 *
 * <p><b>Left out:</b> buckling by twist alone, lateral-torsional buckling, the growth of moments
 * before the critical load, yielding. A frame that nothing holds buckles between the far nodes that
 * are held to remove its free motion.
 */
public final class Buckling {
  private static final int PIECES = 2;

  /** The search ends when its bounds are this close: some thousand roundings of a double [1]. */
  private static final double CLOSE = 1e-13;

  /** How close they are for one that is asked for only if it lies near: five digits [1]. */
  private static final double NEAR = 1e-5;

  /**
   * Where the bounds are parted, just off their middle: whole fractions of a clamped beam's load
   * are critical loads of other beams, right on which a count loses its digits [1].
   */
  private static final double PART = 0.4813;

  /** Two critical loads closer than this part are one: the frame buckles either way [1]. */
  private static final double ALIKE = 1e-9;

  /** Steps of inverse iteration; each takes other shapes down by the nearness of the root. */
  private static final int STEPS = 4;

  private final Response response;
  private final Cutting cutting;
  private final Structure structure;
  private final double[] normalForces;

  private Buckling(Response response) {
    this.response = response;
    cutting = new Cutting(response.frame(), PIECES);
    structure = cutting.structure();
    normalForces = response.normalForces(PIECES);
    SecondOrderLimits.refuseUnfit(response.structure(), response.normalForces(1));
  }

  /**
   * Prepares the question.
   *
   * @param response what the loads do in first order
   * @return its critical loads
   * @throws ModelException when the response is of second order, or a compressed beam slides at its
   *     end or has a rigid arm, which second order does not cover
   */
  public static Buckling of(Response response) {
    if (response.theory() == Response.Theory.SECOND_ORDER) {
      throw new ModelException(
          "load case %s was solved in second order, which has the buckling inside; ask for the critical load of a first-order response"
              .formatted(response.loadCase().name()));
    }
    return new Buckling(response);
  }

  /**
   * The lowest critical load with the frame buckling in its plane; of a frame that is not flat, the
   * lowest of all.
   *
   * @return empty where no beam is compressed
   */
  public Optional<CriticalLoad> inPlane() {
    return lowest(flatOr(Action.FRAME));
  }

  /**
   * The lowest critical load with the frame buckling out of its plane; of a frame that is not flat,
   * the lowest of all.
   *
   * @return empty where no beam is compressed
   */
  public Optional<CriticalLoad> outOfPlane() {
    return lowest(flatOr(Action.GRILLAGE));
  }

  /**
   * The lowest critical load of all.
   *
   * @return empty where no beam is compressed
   */
  public Optional<CriticalLoad> lowest() {
    if (!compressed()) {
      return Optional.empty();
    }
    List<Action> actions = structure.actions();
    Action first = actions.get(0);
    CriticalLoad lowest = search(first, count(first), above(first));
    for (Action other : actions.subList(1, actions.size())) {
      double lower = (1 - ALIKE) * lowest.factor();
      CriticalCount count = count(other);
      if (count.below(lower) > 0) {
        lowest = search(other, count, lower);
      }
    }
    return Optional.of(lowest);
  }

  /**
   * The lowest critical load in the frame's plane if it lies near. Whether it does costs one
   * factorisation; only then is it searched for, to five digits.
   *
   * @param factor the largest that is asked for [1], above zero
   * @return empty where no beam is compressed, or where the frame is stable under this many times
   *     its loads
   */
  public Optional<CriticalLoad> inPlaneBelow(double factor) {
    return below(flatOr(Action.FRAME), factor);
  }

  /**
   * The lowest critical load out of the frame's plane if it lies near, as {@link #inPlaneBelow}.
   *
   * @param factor the largest that is asked for [1], above zero
   * @return empty where no beam is compressed, or where the frame is stable under this many times
   *     its loads
   */
  public Optional<CriticalLoad> outOfPlaneBelow(double factor) {
    return below(flatOr(Action.GRILLAGE), factor);
  }

  private Optional<CriticalLoad> below(Action action, double factor) {
    if (!compressed()) {
      return Optional.empty();
    }
    CriticalCount count = count(action);
    CriticalCount.Trial there = count.trial(factor);
    if (there.count() == 0) {
      return Optional.empty();
    }
    double found = new NearSearch(count, factor, there).upper(NEAR);
    return Optional.of(critical(action, count, found));
  }

  private Action flatOr(Action action) {
    return structure.frame().isFlat() ? action : Action.COUPLED;
  }

  private Optional<CriticalLoad> lowest(Action action) {
    return compressed()
        ? Optional.of(search(action, count(action), above(action)))
        : Optional.empty();
  }

  private CriticalCount count(Action action) {
    return new CriticalCount(structure, action, normalForces);
  }

  private boolean compressed() {
    return Arrays.stream(normalForces).anyMatch(force -> force < 0);
  }

  private double above(Action action) {
    return IntStream.range(0, normalForces.length)
        .filter(i -> normalForces[i] < 0)
        .mapToDouble(i -> clamped(i, action))
        .min()
        .orElseThrow();
  }

  /**
   * The critical load of a piece with both ends held, over its force: at this factor something has
   * buckled. 4π²EI/L², with shear strain as Engesser has it.
   */
  private double clamped(int index, Action action) {
    Member member = structure.members().get(index);
    return action.across().stream()
        .mapToDouble(across -> clamped(member, across) / -normalForces[index])
        .min()
        .orElseThrow();
  }

  private static double clamped(Member member, Across across) {
    StabilityFunctions.Bending bending = across.bending(member);
    double wave = 2 * Math.PI / member.length();
    double bent = wave * wave * bending.rigidity();
    return bent / (1 + bent * bending.give());
  }

  private CriticalLoad search(Action action, CriticalCount count, double above) {
    double low = 0;
    double high = above;
    while (high - low > CLOSE * high) {
      double middle = low + PART * (high - low);
      if (count.below(middle) == 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    count.below(low);
    return critical(action, count, high);
  }

  /** The critical load at a factor, the equations left just below it. */
  private CriticalLoad critical(Action action, CriticalCount count, double factor) {
    double[] shape = shape(count.equations());
    return new CriticalLoad(factor, action, new BuckledShape(cutting, count.at(factor), shape));
  }

  /** The motion that the equations resist least, by inverse iteration. */
  private double[] shape(Equations equations) {
    double[] shape = new double[structure.motions()];
    Arrays.setAll(shape, i -> Math.cos(i * i));
    for (int step = 0; step < STEPS; step++) {
      Motions motions = new Motions(shape.length);
      equations.addMotions(shape, motions);
      double largest =
          IntStream.range(0, shape.length).mapToDouble(motions::get).map(Math::abs).max().orElse(1);
      Arrays.setAll(shape, i -> motions.get(i) / largest);
    }
    return shape;
  }

  @Override
  public String toString() {
    return "Buckling under %s: %s"
        .formatted(
            response.loadCase().name(),
            compressed() ? "some beams are compressed" : "no beam is compressed");
  }
}

package rungwork.solve;

import java.util.List;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;

/**
 * Solves a frame in second order: equilibrium where the loads have moved it. A normal force pushes
 * across as soon as its beam bends or turns, in the frame's plane and out of it; stability
 * functions follow a prismatic beam exactly, and the normal forces are found by turns until they
 * settle.
 *
 * <p>Each load case is solved for itself: two cases do not add up, and half a load does not cause
 * half the moments.
 *
 * <p><b>Assumed.</b> Small turns of the chords; in each beam its mean normal force, so that a beam
 * on which the normal force varies is better cut; a load keeps its direction. Where the shear
 * centre lies off the centroid the normal force bends and twists at once, against Saint-Venant
 * torsion alone: motions come out too large rather than too small. <b>Left out:</b> shortening by
 * bending, torsion by a normal force at the shear centre, warping, yielding.
 */
final class SecondOrder implements Solver {
  /** Normal forces have settled when a turn changes them by less than this part [1]. */
  private static final double SETTLED = 1e-11;

  /** Turns after which forces that have not settled never will. */
  private static final int MOST_TURNS = 60;

  private final Frame frame;
  private final Solver first;

  private SecondOrder(Frame frame, Solver first) {
    this.frame = frame;
    this.first = first;
  }

  /** Prepares a frame on its supports. */
  static SecondOrder of(Frame frame) {
    return new SecondOrder(frame, Solver.of(frame));
  }

  /** Prepares a frame that nothing holds. */
  static SecondOrder unsupported(Frame frame) {
    Frame free = frame.on(List.of());
    return new SecondOrder(frame.on(new FreeMotion(free).holds()), Solver.unsupported(free));
  }

  @Override
  public Response solve(LoadCase loadCase) {
    Response linear = first.solve(loadCase);
    Structure structure = new Structure(frame, frame.supports());
    List<Equations> actions =
        structure.actions().stream().map(action -> new Equations(structure, action)).toList();
    double[] forces = linear.normalForces(1);
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      SecondOrderLimits.refuseUnfit(structure, forces);
      SecondOrderLimits.refuseRopes(structure, forces);
      Response response = turn(structure.under(forces), actions, linear);
      double[] now = response.normalForces(1);
      if (change(forces, now) <= SETTLED) {
        return settled(response);
      }
      forces = now;
    }
    throw new SolveException(
        "load case %s: the normal forces do not settle in second order; %s"
            .formatted(loadCase.name(), critical(linear)));
  }

  @Override
  public double condition() {
    return first.condition();
  }

  private static Response turn(Structure loaded, List<Equations> actions, Response linear) {
    for (int i = 0; i < actions.size(); i++) {
      Action action = loaded.actions().get(i);
      int below =
          loaded.members().stream().mapToInt(member -> member.criticalLoadsBelow(action)).sum();
      if (below + actions.get(i).refactorise(loaded) > 0) {
        throw new SolveException(beyond(linear));
      }
    }
    LoadCase loadCase = linear.loadCase();
    Solution solution = Solution.of(loaded, actions, new Loading(loaded, loadCase));
    return new Response(loaded, Response.Theory.SECOND_ORDER, loadCase, solution);
  }

  private static String beyond(Response linear) {
    return "load case %s is beyond the critical load, where second order has no answer; %s"
        .formatted(linear.loadCase().name(), critical(linear));
  }

  private static String critical(Response linear) {
    return Buckling.of(linear)
        .lowest()
        .map(
            lowest ->
                "the load is %s times the critical one, at which the frame buckles %s"
                    .formatted(Scale.NUMBER.show(1 / lowest.factor(), 3), lowest.motion()))
        .orElse("nothing is compressed in first order");
  }

  private static double change(double[] before, double[] now) {
    double largest = 0;
    double size = 0;
    for (int i = 0; i < now.length; i++) {
      largest = Math.max(largest, Math.abs(now[i] - before[i]));
      size = Math.max(size, Math.abs(now[i]));
    }
    return size == 0 ? largest : largest / size;
  }

  private static Response settled(Response response) {
    if (!(response.residual() <= FirstOrder.LARGEST_RESIDUAL)) {
      throw new SolveException(
          "load case %s is out of balance by %s of its load in second order; it is too near its critical load"
              .formatted(response.loadCase().name(), Scale.NUMBER.show(response.residual(), 2)));
    }
    return response;
  }
}

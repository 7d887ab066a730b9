package rungwork.solve;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;

/**
 * Solves a frame for any number of load cases with one factorisation: direct stiffness, first order
 * (small motions, equilibrium on the undeformed frame), linear elastic.
 */
public final class Solver {
  /** Out-of-balance over load above which a result is refused [1]. */
  static final double LARGEST_RESIDUAL = 1e-9;

  private final Structure structure;
  private final List<Equations> actions;

  private Solver(Structure structure) {
    this.structure = structure;
    actions = structure.actions().stream().map(action -> new Equations(structure, action)).toList();
  }

  /**
   * Prepares a frame: assembles and factorises plane action and grillage action, or both coupled
   * where the frame is not flat.
   *
   * @param frame the frame on its supports
   * @return a solver for it
   * @throws ModelException when nothing holds the frame
   * @throws SolveException when it is a mechanism, naming a node and its motion
   */
  public static Solver of(Frame frame) {
    if (frame.supports().isEmpty()) {
      throw new ModelException(
          "nothing holds the frame: give it supports, or balance the loads by inertia");
    }
    return new Solver(new Structure(frame, frame.supports()));
  }

  /**
   * Prepares a frame that nothing holds, for loads that balance themselves. Six motions of far
   * nodes are held only to remove the free motion; whatever they would carry counts as residual.
   *
   * @param frame the frame; its supports are taken away
   * @return a solver for it
   * @throws SolveException when it can move as a mechanism, naming a node and its motion
   */
  public static Solver unsupported(Frame frame) {
    Frame free = frame.on(List.of());
    return new Solver(new Structure(free, new FreeMotion(free).holds()));
  }

  /**
   * Solves one load case.
   *
   * @param loadCase the loads
   * @return what the frame does
   * @throws ModelException when a load is on a node or beam that the frame lacks
   * @throws SolveException when more than 1e-9 of the load is out of balance
   */
  public Response solve(LoadCase loadCase) {
    Loading loading = new Loading(structure, loadCase);
    Solution solution = Solution.of(structure, actions, loading);
    Response response = new Response(structure, Response.Theory.FIRST_ORDER, loadCase, solution);
    if (!(response.residual() <= LARGEST_RESIDUAL)) {
      throw new SolveException(refusal(response));
    }
    return response;
  }

  private String refusal(Response response) {
    return String.format(
        Locale.ROOT,
        structure.isFree()
            ? "load case %s does not balance itself: %.1e of its load is left over; at most %.0e is"
                + " accepted: add the inertia that answers it"
            : "load case %s is out of balance by %.1e of its load; at most %.0e is accepted: the"
                + " frame is nearly a mechanism, or its stiffnesses differ too much; %s meets the"
                + " least resistance",
        response.loadCase().name(),
        response.residual(),
        LARGEST_RESIDUAL,
        worst().softest());
  }

  private Equations worst() {
    return actions.stream().max(Comparator.comparingDouble(Equations::condition)).orElseThrow();
  }

  /**
   * How many times an error in the loads or stiffnesses can come back in the motions at worst: the
   * condition of the equations, their unknowns scaled alike. Each factor of ten costs a digit of
   * the sixteen that a double has, before refinement wins some back.
   *
   * @return an estimate from below, seldom under a third of the true number [1]
   */
  public double condition() {
    return worst().condition();
  }

  /**
   * Solves several load cases.
   *
   * @param loadCases the load cases
   * @return a response for each, in their order
   */
  public List<Response> solve(List<LoadCase> loadCases) {
    return loadCases.stream().map(this::solve).toList();
  }
}

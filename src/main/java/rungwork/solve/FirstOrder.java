package rungwork.solve;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;

/**
 * First order: one factorisation serves all load cases (direct stiffness, small motions,
 * equilibrium on the undeformed frame, linear elastic).
 */
final class FirstOrder implements Solver {
  /** Out-of-balance over load above which a result is refused [1]. */
  static final double LARGEST_RESIDUAL = 1e-9;

  private final Structure structure;
  private final List<Equations> actions;

  private FirstOrder(Structure structure) {
    this.structure = structure;
    actions = structure.actions().stream().map(action -> new Equations(structure, action)).toList();
  }

  /** Prepares a frame on its supports. */
  static FirstOrder of(Frame frame) {
    if (frame.supports().isEmpty()) {
      throw new ModelException(
          "nothing holds the frame: give it supports, or balance the loads by inertia");
    }
    return new FirstOrder(new Structure(frame, frame.supports()));
  }

  /**
   * Prepares a frame that nothing holds. Six motions of far nodes are held only to remove the free
   * motion; whatever they would carry counts as residual.
   */
  static FirstOrder unsupported(Frame frame) {
    Frame free = frame.on(List.of());
    return new FirstOrder(new Structure(free, new FreeMotion(free).holds()));
  }

  @Override
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

  @Override
  public double condition() {
    return worst().condition();
  }
}

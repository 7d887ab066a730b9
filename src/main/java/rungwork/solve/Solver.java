package rungwork.solve;

import java.util.List;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;

/**
 * Solves a frame for any number of load cases, linear elastic, in first or in second order. For the
 * same frame with many stocks there is {@link Sweep}.
 */
public sealed interface Solver permits FirstOrder, SecondOrder {
  /**
   * Prepares a frame in first order: plane action and grillage action assembled and factorised once
   * for all load cases.
   *
   * @param frame the frame on its supports
   * @return a solver for it
   * @throws ModelException when nothing holds the frame
   * @throws SolveException when it is a mechanism, naming a node and its motion
   */
  static Solver of(Frame frame) {
    return FirstOrder.of(frame);
  }

  /**
   * Prepares a frame that nothing holds in first order, for loads that balance themselves. Six
   * motions of far nodes are held only to remove the free motion; whatever they would carry counts
   * as residual.
   *
   * @param frame the frame; its supports are taken away
   * @return a solver for it
   * @throws SolveException when it can move as a mechanism, naming a node and its motion
   */
  static Solver unsupported(Frame frame) {
    return FirstOrder.unsupported(frame);
  }

  /**
   * Prepares a frame in second order: equilibrium where the loads have moved it. Each load case is
   * solved for itself: two cases do not add up, and half a load does not cause half the moments.
   *
   * <p>Assumed: small turns of the chords; in each beam its mean normal force, so that a beam on
   * which the normal force varies is better cut; a load keeps its direction. Left out: shortening
   * by bending, torsion by a normal force, flexural-torsional buckling, yielding, and any bow or
   * lean that no {@link rungwork.frame.Load.Misfit} states.
   *
   * @param frame the frame on its supports
   * @return a solver for it; it refuses beams under a normal force that slide at an end, have a
   *     rigid arm or their shear centre off their centroid, and loads beyond the critical ones
   * @throws ModelException when nothing holds the frame
   * @throws SolveException when it is a mechanism in first order
   */
  static Solver secondOrder(Frame frame) {
    return SecondOrder.of(frame);
  }

  /**
   * Prepares a frame that nothing holds in second order, for loads that balance themselves. The far
   * nodes that are held to remove its free motion take the moment that loads in balance make by
   * moving with the frame.
   *
   * @param frame the frame; its supports are taken away
   * @return a solver for it, as for {@link #secondOrder}
   * @throws SolveException when it can move as a mechanism
   */
  static Solver secondOrderUnsupported(Frame frame) {
    return SecondOrder.unsupported(frame);
  }

  /**
   * Solves one load case.
   *
   * @param loadCase the loads
   * @return what the frame does
   * @throws ModelException when a load is on a node or beam that the frame lacks
   * @throws SolveException when more than 1e-9 of the load is out of balance
   */
  Response solve(LoadCase loadCase);

  /**
   * How many times an error in the loads or stiffnesses can come back in the motions at worst: the
   * condition of the equations of first order, their unknowns scaled alike. Each factor of ten
   * costs a digit of the sixteen that a double has, before refinement wins some back.
   *
   * @return an estimate from below, seldom under a third of the true number [1]
   */
  double condition();

  /**
   * Solves several load cases.
   *
   * @param loadCases the load cases
   * @return a response for each, in their order
   */
  default List<Response> solve(List<LoadCase> loadCases) {
    return loadCases.stream().map(this::solve).toList();
  }
}

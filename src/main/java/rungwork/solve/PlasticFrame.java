package rungwork.solve;

import java.util.List;
import java.util.function.Function;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;

/**
 * A frame whose beams yield at their ends, and its stiffness as it is now: all six motions of a
 * node together, since yielding couples the two actions.
 */
final class PlasticFrame {
  /** A motion that meets less than this part of the elastic resistance is free: rounding [1]. */
  private static final double FREE = 1e-10;

  private final Structure structure;
  private final List<PlasticMember> members;
  private final Assembly assembly;
  private final double[] elastic;

  PlasticFrame(Structure structure, Function<Beam, YieldSurface> surfaces) {
    this.structure = structure;
    members =
        structure.members().stream()
            .map(member -> new PlasticMember(member, surfaces.apply(member.beam())))
            .toList();
    assembly = new Assembly(structure, 0, 1, 2, 3, 4, 5);
    fill();
    elastic = assembly.factor().matrix().diagonal();
  }

  private void fill() {
    assembly.fill(member -> members.get(member).frameStiffness());
  }

  Structure structure() {
    return structure;
  }

  List<PlasticMember> members() {
    return members;
  }

  /** How the nodes move for a unit of the load; or, where the frame gives way, how that goes. */
  Answer answer(double[] load) {
    fill();
    if (!assembly.factor().factorise(elastic, FREE)) {
      return new Answer(assembly.spread(assembly.factor().freeMotion()), true);
    }
    double[] values = assembly.gathered(load);
    assembly.factor().solve(values);
    return new Answer(assembly.spread(values), false);
  }

  /** Refuses a frame that moves before anything has yielded. */
  void refuseMechanism(Answer answer) {
    if (answer.free()) {
      throw new SolveException(
          "the frame is a mechanism before anything yields: "
              + new Mechanism(structure, answer.motions()).place());
    }
  }

  /**
   * Motions.
   *
   * @param motions of all nodes, in frame axes
   * @param free whether nothing resists them
   */
  record Answer(double[] motions, boolean free) {}
}

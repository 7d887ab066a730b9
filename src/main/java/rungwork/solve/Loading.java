package rungwork.solve;

import rungwork.frame.Load;
import rungwork.frame.LoadCase;

/** A load case in numbers: forces on nodes and line loads on members, in frame axes. */
final class Loading {
  private final Structure structure;
  private final double[] nodal;
  private final double[][] lines;
  private double size;

  Loading(Structure structure, LoadCase loadCase) {
    this.structure = structure;
    nodal = new double[structure.motions()];
    lines = new double[structure.members().size()][3];
    loadCase.loads().forEach(this::add);
  }

  private void add(Load load) {
    if (load instanceof Load.AtNode atNode) {
      double[] wrench = structure.frame().plane().toFrame(atNode.wrench());
      int first = 6 * structure.node(atNode.node());
      for (int i = 0; i < 6; i++) {
        nodal[first + i] += wrench[i];
        size += i < 3 ? Math.abs(wrench[i]) : Math.abs(wrench[i]) / structure.size();
      }
    } else if (load instanceof Load.AlongBeam along) {
      int member = structure.member(along.beam());
      double[] line = structure.frame().plane().toFrame(along.wx(), along.wy(), along.wz());
      for (int i = 0; i < 3; i++) {
        lines[member][i] += line[i];
        size += Math.abs(line[i]) * structure.members().get(member).length();
      }
    }
  }

  /** Forces and moments on all nodes. */
  double[] nodal() {
    return nodal;
  }

  /** The line load of a member in its own terms, as from {@link Member#lineLoad}. */
  double[] line(int member) {
    return structure.members().get(member).lineLoad(lines[member]);
  }

  /** All loads added without regard to their sign, moments over the frame's size [N]. */
  double size() {
    return size;
  }
}

package rungwork.solve;

import java.util.Arrays;

/**
 * The load cases of a sweep as numbers: what acts on the equations of each action, on each member's
 * deformations, on its ends and along it. Values of all cases of one thing lie together.
 */
final class SweepLoads {
  /** Load cases that are solved side by side. */
  static final int CASES = BandFactor.CASES;

  /** Numbers of a line load: at its start along x, y, z and about x, then their growth a metre. */
  static final int LINE = 8;

  final int cases;

  /** Cases, filled up to whole blocks. */
  final int width;

  /** For each action, block by block the equations' loads in the cases of the block. */
  final double[][] equations;

  /** For each beam the forces of its deformations by the loads alone, a value for each case. */
  final double[][] held;

  /** For each beam what loads between its ends do to them, a value for each case. */
  final double[][] ends;

  /** For each beam its line load, a value for each case. */
  final double[][] lines;

  /** How large each case is: forces, and moments over the frame's size [N]. */
  final double[] sizes;

  /** For each case its whole force and moment about the first node over the frame's size [N]. */
  final double[][] resultants;

  /** Loads of nothing. */
  SweepLoads(int cases, int members, int[] equations) {
    this.cases = cases;
    width = (cases + CASES - 1) / CASES * CASES;
    this.equations = new double[equations.length][];
    Arrays.setAll(this.equations, part -> new double[equations[part] * width]);
    held = new double[members][Member.DEFORMATIONS * width];
    ends = new double[members][Member.MOTIONS * width];
    lines = new double[members][LINE * width];
    sizes = new double[cases];
    resultants = new double[cases][6];
  }

  int blocks() {
    return width / CASES;
  }

  /** Sets what acts on the equations of an action. */
  void equations(int part, int loadCase, double[] values) {
    for (int i = 0; i < values.length; i++) {
      equations[part][place(part, i, loadCase / CASES) + loadCase % CASES] = values[i];
    }
  }

  /** Sets what acts on a member. */
  void member(int member, int loadCase, double[] heldForces, double[] endForces, double[] line) {
    spread(held[member], heldForces, loadCase);
    spread(ends[member], endForces, loadCase);
    spread(lines[member], line, loadCase);
  }

  private void spread(double[] into, double[] values, int loadCase) {
    for (int i = 0; i < values.length; i++) {
      into[i * width + loadCase] = values[i];
    }
  }

  /** How many arrays there are: of equations, then held, ends and lines of each beam. */
  int arrays() {
    return equations.length + 3 * held.length;
  }

  /** How many numbers of a case stand in an array. */
  int rows(int index) {
    return array(index).length / width;
  }

  /** Where the first case of a block has a number of an array. */
  int place(int index, int row, int block) {
    return index < equations.length
        ? (block * rows(index) + row) * CASES
        : row * width + block * CASES;
  }

  /** A number of a case. */
  double value(int index, int row, int loadCase) {
    return array(index)[place(index, row, loadCase / CASES) + loadCase % CASES];
  }

  /** What a case leaves out of balance as a whole, over its size [1]. */
  double imbalance(int loadCase) {
    double most = 0;
    for (double part : resultants[loadCase]) {
      most = Math.max(most, Math.abs(part));
    }
    return most == 0 ? 0 : most / sizes[loadCase];
  }

  double[] array(int index) {
    int rest = index - equations.length;
    if (rest < 0) {
      return equations[index];
    }
    double[][] group = rest < held.length ? held : rest < 2 * held.length ? ends : lines;
    return group[rest % held.length];
  }
}

package rungwork.solve;

import java.util.List;

/**
 * A member's stiffness against deformation with the joints at its ends eliminated one after the
 * other, each from the condition that its spring, or nothing, takes the force in it. With k and f
 * from the joints before, c the spring's stiffness (0: released):
 *
 * <pre>
 *   c g = F = rᵀ k (d − r g) + rᵀ f + wᵀp     g = (rᵀ k d + rᵀ f + wᵀp) / (c + rᵀ k r)
 *   k ← k − k r rᵀ k / (c + rᵀ k r)           f ← f − k r (rᵀ f + wᵀp) / (c + rᵀ k r)
 * </pre>
 */
final class Condensation {
  private final List<Joint> joints;
  private final double[][] columns;
  private final double[] resistances;
  private final double[][] stiffness;

  /**
   * Eliminates the joints.
   *
   * @param full stiffness with stiff ends; its entries are replaced
   * @param joints the joints, which leave the member held
   */
  Condensation(double[][] full, List<Joint> joints) {
    this.joints = joints;
    columns = new double[joints.size()][];
    resistances = new double[joints.size()];
    stiffness = full;
    for (int step = 0; step < columns.length; step++) {
      double[] r = joints.get(step).byDeformation();
      double[] column = new double[full.length];
      for (int i = 0; i < column.length; i++) {
        column[i] = dot(stiffness[i], r);
      }
      columns[step] = column;
      resistances[step] = joints.get(step).stiffness() + dot(r, column);
      for (int i = 0; i < column.length; i++) {
        subtract(stiffness[i], column[i] / resistances[step], column);
      }
      if (joints.get(step).stiffness() == 0) {
        joints.get(step).clean(stiffness);
      }
    }
  }

  private static double dot(double[] left, double[] right) {
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += left[i] * right[i];
    }
    return sum;
  }

  private static void subtract(double[] row, double factor, double[] other) {
    if (factor != 0) {
      for (int j = 0; j < row.length; j++) {
        row[j] -= factor * other[j];
      }
    }
  }

  /**
   * How many joints give way with resistance below zero when all nodes are held: critical loads
   * that the joints add to those of the member with stiff ends.
   */
  int negatives(Action action) {
    int below = 0;
    for (int step = 0; step < resistances.length; step++) {
      below += resistances[step] < 0 && joints.get(step).bends(action) ? 1 : 0;
    }
    return below;
  }

  /** The stiffness that is left. */
  double[][] stiffness() {
    return stiffness;
  }

  /**
   * Forces that hold all deformations at zero, replaced by those with the joints giving way.
   *
   * @param clamped the forces with stiff ends
   * @param atEnd N, Vy, Vz, T, My, Mz that the loads alone make at the end
   */
  void giveWay(double[] clamped, double[] atEnd) {
    for (int step = 0; step < columns.length; step++) {
      Joint joint = joints.get(step);
      double force = dot(joint.byDeformation(), clamped) + dot(joint.byLoad(), atEnd);
      subtract(clamped, force / resistances[step], columns[step]);
    }
  }

  /**
   * How far the joints at the start open.
   *
   * @param deformations as the nodes move
   * @param clamped the forces that hold all deformations at zero with stiff ends
   * @param atEnd as in {@link #giveWay}
   * @return an opening for each internal force: N, Vy, Vz, T, My, Mz
   */
  double[] openingsAtStart(double[] deformations, double[] clamped, double[] atEnd) {
    double[] d = deformations.clone();
    double[] f = clamped.clone();
    double[] loads = new double[columns.length];
    for (int step = 0; step < columns.length; step++) {
      Joint joint = joints.get(step);
      loads[step] = dot(joint.byDeformation(), f) + dot(joint.byLoad(), atEnd);
      subtract(f, loads[step] / resistances[step], columns[step]);
    }
    return openings(d, loads)[0];
  }

  /**
   * How far the joints open when nothing acts between the ends.
   *
   * @param deformations as the nodes move
   * @return at the start and at the end, an opening for each internal force: N, Vy, Vz, T, My, Mz
   */
  double[][] openings(double[] deformations) {
    return openings(deformations.clone(), new double[columns.length]);
  }

  private double[][] openings(double[] d, double[] loads) {
    double[][] openings = new double[2][6];
    for (int step = columns.length - 1; step >= 0; step--) {
      Joint joint = joints.get(step);
      double opening = (dot(columns[step], d) + loads[step]) / resistances[step];
      subtract(d, opening, joint.byDeformation());
      openings[joint.atEnd()][joint.internalForce()] = opening;
    }
    return openings;
  }
}

package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Release;

/**
 * A place at a member's end that gives way to one internal force: a release, or a spring in series
 * with the member. The force in it is F = rᵀs + wᵀp: s the forces of the deformations, p what the
 * loads between the ends make of the internal forces at the end when the start is free of them. Its
 * opening g takes r·g off the member's deformation (virtual work).
 *
 * @param force which internal force it gives way to
 * @param atEnd 0 at the start, 1 at the end
 * @param stiffness of the spring [N/m or N·m/rad]; 0 for a release
 * @param byDeformation r, a number for each deformation
 * @param byLoad w, a number for each internal force: N, Vy, Vz, T, My, Mz
 */
record Joint(Release force, int atEnd, double stiffness, double[] byDeformation, double[] byLoad) {
  /** The joints of a beam's ends; releases first, and of them shear forces before moments. */
  static List<Joint> of(Beam beam, double length) {
    List<End> ends = List.of(beam.atStart(), beam.atEnd());
    List<Joint> joints = new ArrayList<>();
    for (Release force : Release.values()) {
      for (int i = 0; i < 2; i++) {
        if (ends.get(i).released().contains(force)) {
          joints.add(of(force, i, 0, length));
        }
      }
    }
    for (Release force : Release.values()) {
      for (int i = 0; i < 2; i++) {
        if (ends.get(i).springs().containsKey(force)) {
          joints.add(of(force, i, ends.get(i).springs().get(force), length));
        }
      }
    }
    return joints;
  }

  /**
   * By equilibrium of the member: N(0) = s₀ − N, T(0) = s₁ − T, Vy(0) = (Mz − s₂ − s₃)/L and Vz(0)
   * = (s₄ + s₅ − My)/L, with N, T, Mz, My what the loads make of them at the end.
   */
  private static Joint of(Release force, int atEnd, double stiffness, double length) {
    double[] r = new double[Member.DEFORMATIONS];
    double[] w = new double[6];
    int own = atEnd == 0 ? -1 : 0;
    switch (force) {
      case NORMAL_FORCE -> {
        r[0] = 1;
        w[0] = own;
      }
      case TORSION -> {
        r[1] = 1;
        w[3] = own;
      }
      case IN_PLANE_BENDING -> r[2 + atEnd] = 1;
      case OUT_OF_PLANE_BENDING -> r[4 + atEnd] = 1;
      case IN_PLANE_SHEAR -> {
        r[2] = -1 / length;
        r[3] = -1 / length;
        w[5] = 1 / length;
        w[1] = 1 + own;
      }
      case OUT_OF_PLANE_SHEAR -> {
        r[4] = 1 / length;
        r[5] = 1 / length;
        w[4] = -1 / length;
        w[2] = 1 + own;
      }
    }
    return new Joint(force, atEnd, stiffness, r, w);
  }

  /** Its internal force's place in N, Vy, Vz, T, My, Mz. */
  int internalForce() {
    return force.ordinal();
  }

  /**
   * Takes the rounding out of a stiffness from which this release was eliminated, so that a motion
   * which nothing resists is seen to be one: what is released has no stiffness, and bending without
   * shear force none against both ends turning alike.
   */
  void clean(double[][] k) {
    int first = force == Release.IN_PLANE_SHEAR ? 2 : 4;
    switch (force) {
      case IN_PLANE_SHEAR, OUT_OF_PLANE_SHEAR -> {
        double a = (k[first][first] + k[first + 1][first + 1] - 2 * k[first][first + 1]) / 4;
        k[first][first] = a;
        k[first + 1][first + 1] = a;
        k[first][first + 1] = -a;
        k[first + 1][first] = -a;
      }
      case NORMAL_FORCE, TORSION, OUT_OF_PLANE_BENDING, IN_PLANE_BENDING -> {
        for (int i = 0; i < k.length; i++) {
          if (byDeformation[i] != 0) {
            clear(k, i);
          }
        }
      }
    }
  }

  private static void clear(double[][] k, int index) {
    for (int i = 0; i < k.length; i++) {
      k[i][index] = 0;
      k[index][i] = 0;
    }
  }

  /** Whether it gives way to a bending moment of the action. */
  boolean bends(Action action) {
    return force == Release.IN_PLANE_BENDING && action != Action.GRILLAGE
        || force == Release.OUT_OF_PLANE_BENDING && action != Action.FRAME;
  }
}

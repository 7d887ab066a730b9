package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A member whose ends yield: its forces, which faces of the yield surface they lie on, and what
 * stiffness that leaves.
 *
 * <pre>
 *   ṡ = k (ė − G γ̇),   Gᵀ ṡ = 0      so   γ̇ = (Gᵀ k G)⁻¹ Gᵀ k ė,   ṡ = (k − k G (Gᵀ k G)⁻¹ Gᵀ k) ė
 * </pre>
 *
 * <p>The columns of G are the normals of the faces in use, γ̇ how fast the hinge works along each
 * (Hill, The Mathematical Theory of Plasticity; the corner rule after Koiter; from memory).
 */
final class PlasticMember {
  /** A face whose own stiffness is below this part of the others' adds nothing to them [1]. */
  private static final double DEPENDENT = 1e-9;

  private final double[][] stiffness;
  private final double[][] compatibility;
  private final YieldSurface surface;
  private final double[] forces = new double[Member.DEFORMATIONS];
  private final List<Hinge> active = new ArrayList<>();
  private double[][] flow = new double[0][];
  private double[][] tangent;

  /**
   * A face in use.
   *
   * @param end 0 at the start, 1 at the end
   * @param face its number in the surface
   */
  record Hinge(int end, int face) {}

  /**
   * A member without forces.
   *
   * @param member the elastic member
   * @param surface what its section carries
   */
  PlasticMember(Member member, YieldSurface surface) {
    stiffness = member.condensation().stiffness();
    compatibility = member.deformationsByMotions();
    this.surface = surface;
    tangent = stiffness;
  }

  /**
   * Forces of the deformations: N, T, Mz at both ends, My at both ends, as {@link Member} counts.
   */
  double[] forces() {
    return forces;
  }

  List<Hinge> active() {
    return active;
  }

  boolean yieldsAt(int end) {
    return active.stream().anyMatch(hinge -> hinge.end() == end);
  }

  /** How near an end's forces are to its yield surface; on it this is 1. */
  double use(int end) {
    double most = 0;
    for (int face = 0; face < surface.faces().size(); face++) {
      most = Math.max(most, use(new Hinge(end, face), forces));
    }
    return most;
  }

  /** The same sum for forces or for their rates. */
  double use(Hinge hinge, double[] s) {
    YieldSurface.Face face = surface.faces().get(hinge.face());
    return hinge.end() == 0 ? face.use(s[0], -s[4], -s[2], s[1]) : face.use(s[0], s[5], s[3], s[1]);
  }

  int faces() {
    return surface.faces().size();
  }

  /** The rates of the forces as the nodes move. */
  double[] rates(double[] motions, int[] places) {
    return times(tangent, deformations(motions, places));
  }

  private double[] deformations(double[] motions, int[] places) {
    double[] result = new double[Member.DEFORMATIONS];
    for (int i = 0; i < result.length; i++) {
      for (int j = 0; j < places.length; j++) {
        result[i] += compatibility[i][j] * motions[places[j]];
      }
    }
    return result;
  }

  /** How fast the hinges work along each face in use, in the order of {@link #active}. */
  double[] flow(double[] motions, int[] places) {
    double[] e = deformations(motions, places);
    return Arrays.stream(flow).mapToDouble(row -> dot(row, e)).toArray();
  }

  /** What the faces in use at an end do together when they work at these rates. */
  Pushover.Yielding yielding(int end, double[] rates) {
    double[] sum = new double[4];
    for (int i = 0; i < rates.length; i++) {
      if (active.get(i).end() == end) {
        YieldSurface.Face face = surface.faces().get(active.get(i).face());
        addTo(sum, new double[] {face.n(), face.y(), face.z(), face.t()}, rates[i]);
      }
    }
    return new Pushover.Yielding(sum[0], sum[1], sum[2], sum[3]);
  }

  /** What the hinges take in a motion [W for a motion a second]. */
  double dissipation(double[] motions, int[] places) {
    double[] rates = flow(motions, places);
    double sum = 0;
    for (int i = 0; i < rates.length; i++) {
      sum += rates[i] * surface.faces().get(active.get(i).face()).reach();
    }
    return sum;
  }

  void advance(double[] rates, double step) {
    for (int i = 0; i < forces.length; i++) {
      forces[i] += step * rates[i];
    }
  }

  /**
   * Takes another face into use.
   *
   * @return false, and nothing changes, where the faces in use leave it no motion of its own
   */
  boolean use(Hinge hinge) {
    active.add(hinge);
    if (yieldAlong()) {
      return true;
    }
    active.remove(active.size() - 1);
    yieldAlong();
    return false;
  }

  void release(int index) {
    active.remove(index);
    yieldAlong();
  }

  /** Solves for flow and tangent; whether the faces in use are independent of each other. */
  private boolean yieldAlong() {
    tangent = Arrays.stream(stiffness).map(double[]::clone).toArray(double[][]::new);
    double[][] normals = active.stream().map(this::normal).toArray(double[][]::new);
    flow = new double[normals.length][];
    for (int m = 0; m < normals.length; m++) {
      double[] resistance = times(tangent, normals[m]);
      double own = dot(normals[m], resistance);
      if (!(own > DEPENDENT * dot(normals[m], times(stiffness, normals[m])))) {
        return false;
      }
      flow[m] = scaled(resistance, 1 / own);
      subtract(tangent, resistance, 1 / own);
      for (int earlier = 0; earlier < m; earlier++) {
        double by = dot(flow[earlier], normals[m]);
        addTo(flow[earlier], flow[m], -by);
      }
    }
    return true;
  }

  private double[] normal(Hinge hinge) {
    YieldSurface.Face face = surface.faces().get(hinge.face());
    return hinge.end() == 0
        ? new double[] {face.n(), face.t(), -face.z(), 0, -face.y(), 0}
        : new double[] {face.n(), face.t(), 0, face.z(), 0, face.y()};
  }

  /** Stiffness that the nodes feel now, 12 × 12 in frame axes: Bᵀ k B. */
  double[][] frameStiffness() {
    double[][] result = new double[Member.MOTIONS][Member.MOTIONS];
    for (int m = 0; m < tangent.length; m++) {
      for (int n = 0; n < tangent.length; n++) {
        if (tangent[m][n] != 0) {
          for (int i = 0; i < result.length; i++) {
            addTo(result[i], compatibility[n], tangent[m][n] * compatibility[m][i]);
          }
        }
      }
    }
    return result;
  }

  private static double[] times(double[][] matrix, double[] vector) {
    return Arrays.stream(matrix).mapToDouble(row -> dot(row, vector)).toArray();
  }

  private static double[] scaled(double[] vector, double factor) {
    return Arrays.stream(vector).map(value -> value * factor).toArray();
  }

  private static void subtract(double[][] matrix, double[] vector, double factor) {
    for (int i = 0; i < matrix.length; i++) {
      addTo(matrix[i], vector, -factor * vector[i]);
    }
  }

  private static void addTo(double[] sum, double[] vector, double factor) {
    for (int j = 0; j < sum.length; j++) {
      sum[j] += factor * vector[j];
    }
  }

  private static double dot(double[] left, double[] right) {
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += left[i] * right[i];
    }
    return sum;
  }
}

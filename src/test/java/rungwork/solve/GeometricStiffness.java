package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Release;
import rungwork.frame.Support;
import rungwork.section.Properties;

/**
 * A second route to critical loads: twelve freedoms a beam in vehicle axes, every beam cut finely,
 * the cubic beam's stiffness and its geometric stiffness (Przemieniecki, Theory of Matrix
 * Structural Analysis, 1968, from memory), all roots of K + λ·G at once. No stability function, no
 * split into actions, no count. Hinges and turning springs are springs between doubled nodes.
 */
final class GeometricStiffness {
  /** A stiff spring where a joint passes a moment on, weak enough for the digits [N·m/rad]. */
  private static final double STIFF = 1e9;

  private final Frame frame;
  private final int pieces;
  private final Map<String, Integer> first = new HashMap<>();
  private final RealMatrix k;
  private final RealMatrix g;
  private int size;

  GeometricStiffness(Frame frame, double[] normalForces, int pieces) {
    this.frame = frame;
    this.pieces = pieces;
    frame.nodes().forEach(node -> place(node.name()));
    for (Beam beam : frame.beams()) {
      for (int i = 0; i <= pieces; i++) {
        place(beam.name() + " " + i);
      }
    }
    k = new Array2DRowRealMatrix(size, size);
    g = new Array2DRowRealMatrix(size, size);
    for (int i = 0; i < frame.beams().size(); i++) {
      add(frame.beams().get(i), normalForces[i]);
    }
    frame.supports().forEach(this::hold);
  }

  private void place(String name) {
    first.put(name, size);
    size += 6;
  }

  private void add(Beam beam, double normalForce) {
    join(beam, beam.start(), beam.name() + " 0", 0);
    join(beam, beam.end(), beam.name() + " " + pieces, 1);
    double length = frame.length(beam);
    RealMatrix turn = new Array2DRowRealMatrix(12, 12);
    for (int i = 0; i < 12; i += 3) {
      turn.setSubMatrix(Lifted.axes(frame, beam), i, i);
    }
    double piece = length / pieces;
    RealMatrix elastic = turn.transpose().multiply(elastic(beam, piece)).multiply(turn);
    RealMatrix geometric = turn.transpose().multiply(geometric(piece, normalForce)).multiply(turn);
    for (int i = 0; i < pieces; i++) {
      int[] at = {first.get(beam.name() + " " + i), first.get(beam.name() + " " + (i + 1))};
      scatter(k, elastic, at);
      scatter(g, geometric, at);
    }
  }

  /** Springs between a node and a beam's end: stiff, soft or none for each internal force. */
  private void join(Beam beam, String node, String end, int atEnd) {
    var joint = atEnd == 0 ? beam.atStart() : beam.atEnd();
    double[][] axes = Lifted.axes(frame, beam);
    for (Release force : Release.values()) {
      double spring =
          joint.released().contains(force) ? 0 : joint.springs().getOrDefault(force, STIFF);
      int offset = force.ordinal() < 3 ? 0 : 3;
      double[] axis = axes[force.ordinal() % 3];
      spring(first.get(node) + offset, first.get(end) + offset, axis, spring);
    }
  }

  private void spring(int a, int b, double[] axis, double spring) {
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double s = spring * axis[i] * axis[j];
        k.addToEntry(a + i, a + j, s);
        k.addToEntry(b + i, b + j, s);
        k.addToEntry(a + i, b + j, -s);
        k.addToEntry(b + i, a + j, -s);
      }
    }
  }

  private static void scatter(RealMatrix sum, RealMatrix part, int[] at) {
    for (int i = 0; i < 12; i++) {
      for (int j = 0; j < 12; j++) {
        sum.addToEntry(at[i / 6] + i % 6, at[j / 6] + j % 6, part.getEntry(i, j));
      }
    }
  }

  private static RealMatrix elastic(Beam beam, double l) {
    Properties p = beam.section().properties();
    double e = beam.material().elasticity().youngsModulus();
    RealMatrix m = new Array2DRowRealMatrix(12, 12);
    pair(m, 0, e * p.area() / l);
    pair(m, 3, beam.material().elasticity().shearModulus() * p.it() / l);
    double z = e * p.iz() / (l * l * l);
    double y = e * p.iy() / (l * l * l);
    bend(m, new int[] {1, 5, 7, 11}, 1, l, new double[] {12 * z, 6 * z, 4 * z, 2 * z});
    bend(m, new int[] {2, 4, 8, 10}, -1, l, new double[] {12 * y, 6 * y, 4 * y, 2 * y});
    return m;
  }

  private static RealMatrix geometric(double l, double n) {
    RealMatrix m = new Array2DRowRealMatrix(12, 12);
    double f = n / (30 * l);
    bend(m, new int[] {1, 5, 7, 11}, 1, l, new double[] {36 * f, 3 * f, 4 * f, -f});
    bend(m, new int[] {2, 4, 8, 10}, -1, l, new double[] {36 * f, 3 * f, 4 * f, -f});
    return m;
  }

  private static void pair(RealMatrix m, int at, double value) {
    m.setEntry(at, at, value);
    m.setEntry(at + 6, at + 6, value);
    m.setEntry(at, at + 6, -value);
    m.setEntry(at + 6, at, -value);
  }

  /** Values for deflection and turn: both alike, mixed times L, near and far times L². */
  private static void bend(RealMatrix m, int[] at, double sign, double l, double[] v) {
    double[][] b = {
      {v[0], v[1] * l, -v[0], v[1] * l},
      {v[1] * l, v[2] * l * l, -v[1] * l, v[3] * l * l},
      {-v[0], -v[1] * l, v[0], -v[1] * l},
      {v[1] * l, v[3] * l * l, -v[1] * l, v[2] * l * l}
    };
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        m.setEntry(at[i], at[j], (i + j) % 2 == 0 ? b[i][j] : sign * b[i][j]);
      }
    }
  }

  private void hold(Support support) {
    int at = first.get(support.node());
    support.held().forEach(way -> k.addToEntry(at + way.ordinal(), at + way.ordinal(), STIFF));
    support.springs().forEach((way, s) -> k.addToEntry(at + way.ordinal(), at + way.ordinal(), s));
  }

  /** The lowest critical factor of all: 1/λ are the values of −L⁻¹ G L⁻ᵀ, K = L Lᵀ. */
  double lowest() {
    DMatrixRMaj inverse = new DMatrixRMaj(size, size);
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(size, true);
    assertTrue(cholesky.decompose(symmetric(k)), "K is positive definite");
    CommonOps_DDRM.invert(cholesky.getT(null), inverse);
    DMatrixRMaj half = new DMatrixRMaj(size, size);
    DMatrixRMaj values = new DMatrixRMaj(size, size);
    CommonOps_DDRM.mult(-1, inverse, symmetric(g), half);
    CommonOps_DDRM.multTransB(half, inverse, values);
    CommonOps_DDRM.symmLowerToFull(values);
    EigenDecomposition_F64<DMatrixRMaj> roots = DecompositionFactory_DDRM.eig(size, false, true);
    assertTrue(roots.decompose(values));
    return 1
        / IntStream.range(0, size)
            .mapToDouble(i -> roots.getEigenvalue(i).getReal())
            .max()
            .orElseThrow();
  }

  /** Without what rounding leaves between its halves. */
  private static DMatrixRMaj symmetric(RealMatrix matrix) {
    return new DMatrixRMaj(matrix.add(matrix.transpose()).scalarMultiply(0.5).getData());
  }
}

package rungwork.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Point;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.section.Properties;

/**
 * A second route to the same answers: one three-dimensional frame with twelve motions a beam, in
 * vehicle axes, all coupled. Each beam's stiffness is the inverse of its flexibility as a
 * cantilever, integrated from the complementary energy of the six internal forces; nothing is split
 * into actions, nothing is looked up in a stiffness table.
 */
final class SpaceFrame {
  private static final double[] GAUSS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  private final Frame frame;
  private final Map<String, Integer> index = new HashMap<>();
  private final double[] motions;

  SpaceFrame(Frame frame, List<Load.AtNode> loads) {
    this.frame = frame;
    frame.nodes().forEach(node -> index.put(node.name(), index.size()));
    int size = 6 * index.size();
    RealMatrix k = new Array2DRowRealMatrix(size, size);
    frame.beams().forEach(beam -> add(k, beam));
    double[] f = new double[size];
    for (Load.AtNode load : loads) {
      double[] wrench = of(load.wrench());
      for (int i = 0; i < 6; i++) {
        f[6 * index.get(load.node()) + i] += wrench[i];
      }
    }
    frame.supports().forEach(support -> hold(k, f, support));
    motions = new LUDecomposition(k).getSolver().solve(new ArrayRealVector(f)).toArray();
  }

  private void hold(RealMatrix k, double[] f, Support support) {
    int first = 6 * index.get(support.node());
    support
        .springs()
        .forEach((way, s) -> k.addToEntry(first + way.ordinal(), first + way.ordinal(), s));
    support
        .held()
        .forEach(
            way -> {
              int row = first + way.ordinal();
              for (int j = 0; j < k.getRowDimension(); j++) {
                k.setEntry(row, j, 0);
                k.setEntry(j, row, 0);
              }
              k.setEntry(row, row, 1);
              f[row] = 0;
            });
  }

  private void add(RealMatrix k, Beam beam) {
    int[] first = {6 * index.get(beam.start()), 6 * index.get(beam.end())};
    RealMatrix[][] blocks = blocks(beam);
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        RealMatrix old =
            k.getSubMatrix(first[i], first[i] + 5, first[j], first[j] + 5).add(blocks[i][j]);
        k.setSubMatrix(old.getData(), first[i], first[j]);
      }
    }
  }

  /** Stiffness blocks: the end's own from its flexibility, the start's from equilibrium. */
  private RealMatrix[][] blocks(Beam beam) {
    RealMatrix axes = axes(beam);
    RealMatrix end =
        axes.transpose().multiply(MatrixUtils.inverse(flexibility(beam))).multiply(axes);
    RealMatrix carry = carry(beam);
    RealMatrix cross = carry.multiply(end).scalarMultiply(-1);
    return new RealMatrix[][] {
      {carry.multiply(end).multiply(carry.transpose()), cross}, {cross.transpose(), end}
    };
  }

  /** The wrench at the start that is the same as a wrench at the end. */
  private RealMatrix carry(Beam beam) {
    Point from = frame.node(beam.end()).at();
    Point to = frame.node(beam.start()).at();
    RealMatrix carry = new Array2DRowRealMatrix(6, 6);
    for (int i = 0; i < 6; i++) {
      double[] unit = new double[6];
      unit[i] = 1;
      Wrench w = new Wrench(unit[0], unit[1], unit[2], unit[3], unit[4], unit[5]);
      carry.setColumn(i, of(w.moved(from, to)));
    }
    return carry;
  }

  /** Turns vehicle components of a force and a moment into the beam's. */
  private RealMatrix axes(Beam beam) {
    Point a = frame.node(beam.start()).at();
    Point b = frame.node(beam.end()).at();
    double length = a.distance(b);
    double[] x = {(b.x() - a.x()) / length, (b.y() - a.y()) / length, (b.z() - a.z()) / length};
    double[] z = frame.plane().toVehicle(0, 0, 1);
    double[] y = {z[1] * x[2] - z[2] * x[1], z[2] * x[0] - z[0] * x[2], z[0] * x[1] - z[1] * x[0]};
    RealMatrix axes = new Array2DRowRealMatrix(6, 6);
    RealMatrix turn = new Array2DRowRealMatrix(new double[][] {x, y, z});
    axes.setSubMatrix(turn.getData(), 0, 0);
    axes.setSubMatrix(turn.getData(), 3, 3);
    return axes;
  }

  /** Motion of the end, its start clamped, by a unit wrench at the end's centroid. */
  private RealMatrix flexibility(Beam beam) {
    Properties p = beam.section().properties();
    Elasticity m = beam.material().elasticity();
    double e = m.youngsModulus();
    RealMatrix give =
        MatrixUtils.createRealDiagonalMatrix(
            new double[] {
              1 / (e * p.area()),
              0,
              0,
              1 / (m.shearModulus() * p.it()),
              1 / (e * p.iy()),
              1 / (e * p.iz())
            });
    double length = frame.length(beam);
    RealMatrix flexibility = new Array2DRowRealMatrix(6, 6);
    for (int i = 0; i < 3; i++) {
      RealMatrix b = internal(length * (1 - GAUSS[i]), p.shearCentreY());
      flexibility =
          flexibility.add(
              b.transpose().multiply(give).multiply(b).scalarMultiply(WEIGHT[i] * length));
    }
    return flexibility;
  }

  /** Internal forces at a cut by a wrench at the end: rows N, Vy, Vz, T, My, Mz. */
  private static RealMatrix internal(double toEnd, double shearCentre) {
    RealMatrix b = MatrixUtils.createRealIdentityMatrix(6);
    b.setEntry(3, 2, -shearCentre);
    b.setEntry(4, 2, -toEnd);
    b.setEntry(5, 1, toEnd);
    return b;
  }

  private static double[] of(Wrench w) {
    return new double[] {w.fx(), w.fy(), w.fz(), w.mx(), w.my(), w.mz()};
  }

  /** The six motions of a node in vehicle axes. */
  double[] motion(String node) {
    int first = 6 * index.get(node);
    return Arrays.copyOfRange(motions, first, first + 6);
  }

  /** N, Vy, Vz, T, My, Mz at the end of a beam. */
  double[] forcesAtEnd(Beam beam) {
    RealMatrix[][] blocks = blocks(beam);
    RealMatrix toBeam =
        internal(0, beam.section().properties().shearCentreY()).multiply(axes(beam));
    double[] byStart = toBeam.multiply(blocks[1][0]).operate(motion(beam.start()));
    double[] byEnd = toBeam.multiply(blocks[1][1]).operate(motion(beam.end()));
    double[] forces = new double[6];
    Arrays.setAll(forces, i -> byStart[i] + byEnd[i]);
    return forces;
  }
}

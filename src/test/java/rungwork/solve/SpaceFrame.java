package rungwork.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
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
public final class SpaceFrame {
  private static final double[] GAUSS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  private final Frame frame;
  private final List<? extends Load> loads;
  private final Map<String, Integer> index = new HashMap<>();
  private final double[] motions;

  /**
   * Solves.
   *
   * @param frame the frame on its supports
   * @param loads loads of any kind
   */
  public SpaceFrame(Frame frame, List<? extends Load> loads) {
    this.frame = frame;
    this.loads = loads;
    frame.nodes().forEach(node -> index.put(node.name(), index.size()));
    int size = 6 * index.size();
    RealMatrix k = new Array2DRowRealMatrix(size, size);
    double[] f = new double[size];
    for (Beam beam : frame.beams()) {
      add(k, beam);
      add(f, beam.end(), endCarry(beam).operate(clampedEnd(beam)), -1);
      add(f, beam.start(), clampedStart(beam), -1);
    }
    for (Load load : loads) {
      if (load instanceof Load.AtNode atNode) {
        add(f, atNode.node(), of(atNode.wrench()), 1);
      }
    }
    frame.supports().forEach(support -> hold(k, f, support));
    motions = new LUDecomposition(k).getSolver().solve(new ArrayRealVector(f)).toArray();
  }

  private void add(double[] f, String node, double[] wrench, double sign) {
    for (int i = 0; i < 6; i++) {
      f[6 * index.get(node) + i] += sign * wrench[i];
    }
  }

  private void hold(RealMatrix k, double[] f, Support support) {
    int first = 6 * index.get(support.node());
    support
        .springs()
        .forEach(
            (way, s) -> {
              k.addToEntry(first + way.ordinal(), first + way.ordinal(), s);
              f[first + way.ordinal()] += s * settled(support.node(), way);
            });
    support.held().forEach(way -> hold(k, f, first + way.ordinal(), settled(support.node(), way)));
  }

  private static void hold(RealMatrix k, double[] f, int row, double value) {
    for (int j = 0; j < k.getRowDimension(); j++) {
      f[j] -= k.getEntry(j, row) * value;
      k.setEntry(row, j, 0);
      k.setEntry(j, row, 0);
    }
    k.setEntry(row, row, 1);
    f[row] = value;
  }

  private double settled(String node, Freedom way) {
    double sum = 0;
    for (Load load : loads) {
      if (load instanceof Load.Settlement settlement
          && settlement.node().equals(node)
          && settlement.motion() == way) {
        sum += settlement.amount();
      }
    }
    return sum;
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
    RealMatrix end = stiffness(beam);
    RealMatrix[] carry = {startCarry(beam).scalarMultiply(-1), endCarry(beam)};
    RealMatrix[][] blocks = new RealMatrix[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        blocks[i][j] = carry[i].multiply(end).multiply(carry[j].transpose());
      }
    }
    return blocks;
  }

  /** Force at the beam's end by its motion against the start, in vehicle axes. */
  private RealMatrix stiffness(Beam beam) {
    RealMatrix axes = axes(beam);
    return axes.transpose().multiply(MatrixUtils.inverse(flexibility(beam))).multiply(axes);
  }

  private RealMatrix startCarry(Beam beam) {
    return carry(frame.endOf(beam), frame.node(beam.start()).at());
  }

  private RealMatrix endCarry(Beam beam) {
    return carry(frame.endOf(beam), frame.node(beam.end()).at());
  }

  /** The wrench at one place that is the same as a wrench at another. */
  private static RealMatrix carry(Point from, Point to) {
    RealMatrix carry = new Array2DRowRealMatrix(6, 6);
    for (int i = 0; i < 6; i++) {
      double[] unit = new double[6];
      unit[i] = 1;
      Wrench w = new Wrench(unit[0], unit[1], unit[2], unit[3], unit[4], unit[5]);
      carry.setColumn(i, of(w.moved(from, to)));
    }
    return carry;
  }

  /** What holds the beam's end at rest, its start clamped, in vehicle axes. */
  private double[] clampedEnd(Beam beam) {
    double[] free = axes(beam).transpose().operate(freeEnd(beam));
    double[] held = stiffness(beam).operate(free);
    Arrays.setAll(held, i -> -held[i]);
    return held;
  }

  /** What the start node then does to the beam: all of it is in balance. */
  private double[] clampedStart(Beam beam) {
    Point node = frame.node(beam.start()).at();
    Wrench sum = Totals.about(node, frame, on(beam));
    double[] end = startCarry(beam).operate(clampedEnd(beam));
    double[] start = of(sum);
    Arrays.setAll(start, i -> -start[i] - end[i]);
    return start;
  }

  private List<Load> on(Beam beam) {
    return loads.stream()
        .filter(
            load ->
                load instanceof Load.OnBeam on && on.beam().equals(beam.name())
                    || load instanceof Load.AlongBeam along && along.beam().equals(beam.name())
                    || load instanceof Load.AlongPart part && part.beam().equals(beam.name()))
        .map(load -> (Load) load)
        .toList();
  }

  /** Motion of the end by what is on the beam, its start clamped: virtual work. */
  private double[] freeEnd(Beam beam) {
    double length = frame.length(beam);
    double offset = beam.section().properties().shearCentreY();
    RealMatrix give = give(beam);
    double[] strain = strain(beam);
    double[] motion = new double[6];
    List<Double> breaks = breaks(beam, length);
    for (int piece = 1; piece < breaks.size(); piece++) {
      double from = breaks.get(piece - 1);
      double run = breaks.get(piece) - from;
      for (int i = 0; i < 3; i++) {
        double x = from + GAUSS[i] * run;
        double[] stretched = give.operate(internal(beam, x));
        Arrays.setAll(stretched, j -> stretched[j] + strain[j]);
        double[] part = internal(length - x, offset).transpose().operate(stretched);
        for (int j = 0; j < 6; j++) {
          motion[j] += WEIGHT[i] * run * part[j];
        }
      }
    }
    double[] opened = springs(beam.atStart()).operate(internal(beam, 0));
    double[] moved = internal(length, offset).transpose().operate(opened);
    Arrays.setAll(motion, i -> motion[i] + moved[i]);
    return motion;
  }

  private List<Double> breaks(Beam beam, double length) {
    TreeSet<Double> breaks = new TreeSet<>(List.of(0.0, length));
    for (Load load : on(beam)) {
      if (load instanceof Load.OnBeam on) {
        breaks.add(on.from());
      } else if (load instanceof Load.AlongPart part) {
        breaks.add(part.from());
        breaks.add(Math.min(length, part.to()));
      }
    }
    return List.copyOf(breaks);
  }

  /** Internal forces at a cut of the beam as a cantilever by all loads beyond. */
  private double[] internal(Beam beam, double x) {
    double[] sum = new double[6];
    double length = frame.length(beam);
    for (Load load : on(beam)) {
      if (load instanceof Load.OnBeam on) {
        if (on.from() > x) {
          add(sum, beam, on.from() - x, on.wrench(), 1);
        }
      } else if (load instanceof Load.AlongBeam along) {
        Load.PerMetre w = new Load.PerMetre(along.wx(), along.wy(), along.wz());
        add(sum, beam, x, new Load.AlongPart(beam.name(), 0, length, w, w));
      } else if (load instanceof Load.AlongPart part && part.to() > x) {
        add(sum, beam, x, part);
      }
    }
    return sum;
  }

  private void add(double[] sum, Beam beam, double x, Load.AlongPart part) {
    double from = Math.max(x, part.from());
    for (int i = 0; i < 3; i++) {
      double s = from + GAUSS[i] * (part.to() - from);
      double t = (s - part.from()) / (part.to() - part.from());
      Load.PerMetre a = part.first();
      Load.PerMetre b = part.last();
      Wrench first = Wrench.force(a.wx(), a.wy(), a.wz()).times(1 - t);
      Wrench there = first.plus(Wrench.force(b.wx(), b.wy(), b.wz()).times(t));
      add(sum, beam, s - x, there, WEIGHT[i] * (part.to() - from));
    }
  }

  private void add(double[] sum, Beam beam, double arm, Wrench wrench, double factor) {
    double offset = beam.section().properties().shearCentreY();
    double[] part = internal(arm, offset).operate(axes(beam).operate(of(wrench)));
    for (int i = 0; i < 6; i++) {
      sum[i] += factor * part[i];
    }
  }

  /** Strains without a force: N, Vy, Vz, T, My, Mz. */
  private double[] strain(Beam beam) {
    double[] sum = new double[6];
    double length = frame.length(beam);
    for (Load load : loads) {
      if (load instanceof Load.Warmth warmth && warmth.beam().equals(beam.name())) {
        sum[0] += warmth.expansion() * warmth.rise();
        sum[4] += warmth.expansion() * warmth.acrossZ();
        sum[5] -= warmth.expansion() * warmth.acrossY();
      } else if (load instanceof Load.Misfit misfit && misfit.beam().equals(beam.name())) {
        sum[0] += misfit.tooLong() / length;
        sum[3] += misfit.twisted() / length;
        sum[4] += 8 * misfit.bowZ() / (length * length);
        sum[5] -= 8 * misfit.bowY() / (length * length);
      }
    }
    return sum;
  }

  /** Turns vehicle components of a force and a moment into the beam's. */
  private RealMatrix axes(Beam beam) {
    RealMatrix axes = new Array2DRowRealMatrix(6, 6);
    RealMatrix turn = new Array2DRowRealMatrix(Lifted.axes(frame, beam));
    axes.setSubMatrix(turn.getData(), 0, 0);
    axes.setSubMatrix(turn.getData(), 3, 3);
    return axes;
  }

  /** How a beam gives way to each internal force, per length. */
  private static RealMatrix give(Beam beam) {
    Properties p = beam.section().properties();
    Elasticity m = beam.material().elasticity();
    double e = m.youngsModulus();
    double g = m.shearModulus();
    boolean shears = beam.bending() == Beam.Bending.WITH_SHEAR_STRAIN;
    return MatrixUtils.createRealDiagonalMatrix(
        new double[] {
          1 / (e * p.area()),
          shears ? 1 / (g * p.shearY()) : 0,
          shears ? 1 / (g * p.shearZ()) : 0,
          1 / (g * p.it()),
          1 / (e * p.iy()),
          1 / (e * p.iz())
        });
  }

  /** How the springs of an end give way. */
  private static RealMatrix springs(End end) {
    double[] give = new double[6];
    end.springs().forEach((force, stiffness) -> give[force.ordinal()] = 1 / stiffness);
    return MatrixUtils.createRealDiagonalMatrix(give);
  }

  /** Motion of the end, its start clamped, by a unit wrench at the end's centroid. */
  private RealMatrix flexibility(Beam beam) {
    double offset = beam.section().properties().shearCentreY();
    double length = frame.length(beam);
    RealMatrix flexibility =
        work(springs(beam.atEnd()), 0, offset).add(work(springs(beam.atStart()), length, offset));
    for (int i = 0; i < 3; i++) {
      RealMatrix cut = work(give(beam), length * (1 - GAUSS[i]), offset);
      flexibility = flexibility.add(cut.scalarMultiply(WEIGHT[i] * length));
    }
    return flexibility;
  }

  private static RealMatrix work(RealMatrix give, double toEnd, double offset) {
    RealMatrix b = internal(toEnd, offset);
    return b.transpose().multiply(give).multiply(b);
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

  /**
   * Internal forces at the end of a beam.
   *
   * @param beam one of the frame's
   * @return N, Vy, Vz, T, My, Mz
   */
  public double[] forcesAtEnd(Beam beam) {
    RealMatrix end = stiffness(beam);
    double[] byStart = startCarry(beam).transpose().operate(motion(beam.start()));
    double[] moved = endCarry(beam).transpose().operate(motion(beam.end()));
    Arrays.setAll(moved, i -> moved[i] - byStart[i]);
    double[] forces = end.operate(moved);
    double[] clamped = clampedEnd(beam);
    Arrays.setAll(forces, i -> forces[i] + clamped[i]);
    return internal(0, beam.section().properties().shearCentreY())
        .multiply(axes(beam))
        .operate(forces);
  }
}

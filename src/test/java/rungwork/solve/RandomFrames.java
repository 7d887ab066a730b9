package rungwork.solve;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;

/** Frames and loads made up from a seed: a crooked grid of beams in one of the planes. */
final class RandomFrames {
  private static final int COLUMNS = 3;
  private static final int ROWS = 4;

  private final Random random;
  private final Plane plane;

  RandomFrames(long seed) {
    random = new Random(seed);
    plane = Plane.values()[random.nextInt(3)];
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  Frame frame() {
    Frame.Builder frame = Frame.in(plane);
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        double p = 0.8 * row + between(-0.2, 0.2);
        double q = 0.6 * column + between(-0.2, 0.2);
        double[] at = plane.toVehicle(p, q, 0.3);
        frame.node(name(row, column), new Point(at[0], at[1], at[2]));
      }
    }
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        connect(frame, row, column);
      }
    }
    return frame
        .support(Support.fixed(name(0, 0)))
        .support(Support.holding(name(ROWS - 1, 0), Freedom.values()[random.nextInt(3)]))
        .support(Support.spring(name(1, 2), Freedom.UZ, between(1e4, 1e6)))
        .support(Support.spring(name(2, 1), Freedom.RX, between(1e3, 1e5)))
        .build();
  }

  private void connect(Frame.Builder frame, int row, int column) {
    if (row + 1 < ROWS) {
      frame.beam(beam(name(row, column), name(row + 1, column)));
    }
    if (column + 1 < COLUMNS) {
      Beam across = beam(name(row, column), name(row, column + 1));
      frame.beam(row == 0 ? across : loosened(across));
    }
  }

  private Beam beam(String start, String end) {
    return Beam.rigid(start + end, start, end, stock());
  }

  /** Some crossbeams let go at an end; the first row never does, so nothing becomes a mechanism. */
  private Beam loosened(Beam beam) {
    Set<Release> bending = EnumSet.of(Release.IN_PLANE_BENDING, Release.OUT_OF_PLANE_BENDING);
    return switch (random.nextInt(5)) {
      case 0 -> beam.released(Release.MOMENTS, Set.of());
      case 1 -> beam.released(Set.of(), bending);
      case 2 -> beam.released(Release.MOMENTS, bending);
      case 3 -> beam.released(forces(), EnumSet.of(Release.IN_PLANE_BENDING, Release.TORSION));
      default -> beam;
    };
  }

  private Set<Release> forces() {
    return random.nextBoolean()
        ? EnumSet.of(Release.NORMAL_FORCE, Release.OUT_OF_PLANE_SHEAR)
        : EnumSet.of(Release.IN_PLANE_SHEAR);
  }

  /** The same frame with springs in joints, rigid arms and shear strain. */
  Frame jointed(Frame frame) {
    return frame.with(
        beam ->
            beam.joined(jointed(beam.atStart()), jointed(beam.atEnd()))
                .bending(Beam.Bending.values()[random.nextInt(2)]));
  }

  private End jointed(End end) {
    End sprung = end;
    for (Release force : Release.values()) {
      if (random.nextInt(4) == 0 && !end.released().contains(force)) {
        boolean moment = Release.MOMENTS.contains(force);
        sprung = sprung.sprung(force, moment ? between(1e3, 1e5) : between(1e6, 1e8));
      }
    }
    if (random.nextBoolean()) {
      return sprung;
    }
    double[] arm = plane.toVehicle(between(-0.08, 0.08), between(-0.08, 0.08), 0);
    return sprung.armed(arm[0], arm[1], arm[2]);
  }

  private Stock stock() {
    Stocks.Shape shape =
        new Stocks.Shape(
            between(1e-4, 6e-4), between(2e-8, 5e-7), between(2e-8, 5e-7), between(1e-9, 5e-7));
    double eccentricity = random.nextBoolean() ? between(-0.04, 0.04) : 0;
    return new Stocks(200e9, between(70e9, 90e9)).eccentric(shape, eccentricity);
  }

  private static String name(int row, int column) {
    return "N" + row + column;
  }

  /** Wrenches at a third of the nodes. */
  LoadCase wrenches(Frame frame) {
    List<Load> loads = new ArrayList<>();
    frame.nodes().stream()
        .filter(node -> random.nextInt(3) == 0)
        .forEach(node -> loads.add(new Load.AtNode(node.name(), wrench())));
    loads.add(new Load.AtNode(name(3, 2), wrench()));
    return LoadCase.of("wrenches", loads.toArray(Load[]::new));
  }

  /** Wrenches at nodes and on beams. */
  LoadCase wrenchesAnywhere(Frame frame) {
    List<Load> loads = new ArrayList<>(wrenches(frame).loads());
    frame.beams().stream()
        .filter(beam -> random.nextInt(3) == 0)
        .forEach(beam -> loads.add(onBeam(frame, beam)));
    return LoadCase.of("wrenches anywhere", loads.toArray(Load[]::new));
  }

  private Load onBeam(Frame frame, Beam beam) {
    return new Load.OnBeam(beam.name(), between(0.05, 0.95) * frame.length(beam), wrench());
  }

  /** Wrenches at nodes and on beams, and loads along whole beams and parts of them. */
  LoadCase forces(Frame frame) {
    List<Load> loads = new ArrayList<>(wrenchesAnywhere(frame).loads());
    for (Beam beam : frame.beams()) {
      if (random.nextBoolean()) {
        double[] w = random.doubles(3, -900, 900).toArray();
        loads.add(new Load.AlongBeam(beam.name(), w[0], w[1], w[2]));
      }
      if (random.nextBoolean()) {
        double length = frame.length(beam);
        double from = between(0, 0.5) * length;
        double to = random.nextBoolean() ? length : between(0.6, 1) * length;
        loads.add(new Load.AlongPart(beam.name(), from, to, perMetre(), perMetre()));
      }
    }
    return LoadCase.of("forces", loads.toArray(Load[]::new));
  }

  /** All kinds of loads: forces, warmth, misfit, settlement. */
  LoadCase all(Frame frame) {
    List<Load> loads = new ArrayList<>(forces(frame).loads());
    for (Beam beam : frame.beams()) {
      if (random.nextInt(3) == 0) {
        double[] t = random.doubles(3, -20, 20).toArray();
        loads.add(new Load.Warmth(beam.name(), 12e-6, t[0], 20 * t[1], 20 * t[2]));
      }
      if (random.nextInt(3) == 0) {
        double[] d = random.doubles(4, -2e-4, 2e-4).toArray();
        loads.add(new Load.Misfit(beam.name(), d[0], 20 * d[1], d[2], d[3]));
      }
    }
    frame.supports().forEach(support -> settle(loads, support));
    return LoadCase.of("all", loads.toArray(Load[]::new));
  }

  private void settle(List<Load> loads, Support support) {
    for (Freedom motion : Freedom.values()) {
      boolean supported = support.held().contains(motion) || support.springs().containsKey(motion);
      if (supported && random.nextBoolean()) {
        loads.add(new Load.Settlement(support.node(), motion, between(-2e-4, 2e-4)));
      }
    }
  }

  private Load.PerMetre perMetre() {
    double[] w = random.doubles(3, -900, 900).toArray();
    return new Load.PerMetre(w[0], w[1], w[2]);
  }

  private Wrench wrench() {
    double[] w = random.doubles(6, -1000, 1000).toArray();
    return new Wrench(w[0], w[1], w[2], w[3] / 4, w[4] / 4, w[5] / 4);
  }
}

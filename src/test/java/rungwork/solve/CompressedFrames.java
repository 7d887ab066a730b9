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

/**
 * Crooked ladders made up from a seed, pushed along at one end: symmetric sections, some hinges and
 * some turning springs in joints.
 */
final class CompressedFrames {
  private static final int BAYS = 3;

  private final Random random;
  private final Plane plane;

  CompressedFrames(long seed) {
    random = new Random(seed);
    plane = Plane.values()[random.nextInt(3)];
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  Frame frame() {
    Frame.Builder frame = Frame.in(plane);
    for (int i = 0; i <= BAYS; i++) {
      for (int side = 0; side < 2; side++) {
        double p = 0.8 * i + between(-0.1, 0.1);
        double[] at = plane.toVehicle(p, 0.6 * side + between(-0.08, 0.08), 0.3);
        frame.node(name(side, i), new Point(at[0], at[1], at[2]));
      }
    }
    for (int i = 0; i <= BAYS; i++) {
      frame.beam(loosened(beam(name(0, i), name(1, i)), i));
      for (int side = 0; side < 2 && i < BAYS; side++) {
        frame.beam(beam(name(side, i), name(side, i + 1)));
      }
    }
    Freedom normal = plane.motions().get(2);
    return frame
        .support(Support.fixed(name(0, 0)))
        .support(Support.pinned(name(1, 0)))
        .support(Support.holding(name(random.nextInt(2), 2), normal))
        .support(Support.spring(name(1, 3), plane.motions().get(1), between(1e3, 1e5)))
        .build();
  }

  private Beam loosened(Beam beam, int bay) {
    Set<Release> bending = EnumSet.of(Release.IN_PLANE_BENDING, Release.OUT_OF_PLANE_BENDING);
    return switch (bay == 1 ? 3 : random.nextInt(4)) {
      case 0 -> beam.released(Release.MOMENTS, bending);
      case 1 ->
          beam.joined(
              End.RIGID.sprung(Release.IN_PLANE_BENDING, between(1e3, 1e5)),
              End.RIGID.sprung(Release.OUT_OF_PLANE_BENDING, between(1e3, 1e5)));
      case 2 -> beam.released(Set.of(), EnumSet.of(Release.IN_PLANE_BENDING));
      default -> beam;
    };
  }

  private Beam beam(String start, String end) {
    return Beam.rigid(start + end, start, end, stock());
  }

  private Stock stock() {
    return new Stocks(200e9, 80e9)
        .with(
            new Stocks.Shape(
                between(1e-4, 6e-4),
                between(5e-9, 5e-8),
                between(5e-9, 5e-8),
                between(1e-8, 1e-7)));
  }

  static String name(int side, int bay) {
    return (side == 0 ? "R" : "L") + bay;
  }

  /** Pushes at the far end and some wrenches; scaled by a factor. */
  LoadCase pushed(double factor) {
    double[] right = plane.toVehicle(-between(800, 1200) * factor, 30 * factor, 20 * factor);
    double[] left = plane.toVehicle(-between(800, 1200) * factor, 10 * factor, -25 * factor);
    return LoadCase.of(
        "pushed",
        new Load.AtNode(name(0, BAYS), Wrench.force(right[0], right[1], right[2])),
        new Load.AtNode(name(1, BAYS), Wrench.force(left[0], left[1], left[2])));
  }

  /** The same with loads along and on beams, and beams that do not fit. */
  LoadCase loaded(Frame frame, double factor) {
    List<Load> loads = new ArrayList<>(pushed(factor).loads());
    for (Beam beam : frame.beams()) {
      double length = frame.length(beam);
      double[] w = random.doubles(6, -80 * factor, 80 * factor).toArray();
      Load.PerMetre first = new Load.PerMetre(w[0], w[1], w[2]);
      Load.PerMetre last = new Load.PerMetre(w[3], w[4], w[5]);
      loads.add(new Load.AlongPart(beam.name(), 0.2 * length, 0.7 * length, first, last));
      loads.add(
          new Load.OnBeam(
              beam.name(), 0.4 * length, new Wrench(0, w[1], w[2], w[0] / 9, w[3] / 9, w[4] / 9)));
    }
    return LoadCase.of("loaded", loads.toArray(Load[]::new));
  }

  /** Beams that were made bent, one each way. */
  LoadCase bent(Frame frame, double factor) {
    List<Load> loads = new ArrayList<>(pushed(factor).loads());
    for (Beam beam : frame.beams()) {
      loads.add(
          new Load.Misfit(
              beam.name(), 0, 0, between(-0.002, 0.002) * factor, between(-0.002, 0.002) * factor));
    }
    return LoadCase.of("bent", loads.toArray(Load[]::new));
  }
}

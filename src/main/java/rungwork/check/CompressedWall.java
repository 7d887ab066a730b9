package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import rungwork.quantity.Kind;
import rungwork.section.Properties;
import rungwork.section.Spot;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;
import rungwork.solve.InternalForces;

/**
 * A wall at the cut where one of its edges is compressed most.
 *
 * @param wall the wall
 * @param cut the cut
 * @param stress the compressive stress at the edge that is compressed more [Pa]
 * @param other the compressive stress at its other edge, negative where it is tension [Pa]
 */
record CompressedWall(Wall wall, Cut cut, double stress, double other) {
  private static final Symbol C = new Symbol("c", Kind.LENGTH, "flat width; diameter if round");
  private static final Symbol T = new Symbol("t", Kind.LENGTH, "thickness");
  private static final Symbol MORE = new Symbol("σ₁", Kind.STRESS, "compression at one edge");
  private static final Symbol LESS = new Symbol("σ₂", Kind.STRESS, "compression at the other");
  private static final String TABLE = "EN 1993-1-1:2005, table 5.2";

  private static final Formula WIDTH_TO_THICKNESS =
      new Formula(
          new Symbol("c/t", Kind.RATIO, "width to thickness"),
          "{c}/{t}",
          List.of(C, T),
          TABLE,
          in -> in[0] / in[1]);
  private static final Formula STRESS_RATIO =
      new Formula(
          new Symbol("ψ", Kind.RATIO, "stress ratio of both edges"),
          "{σ₂}/{σ₁}",
          List.of(LESS, MORE),
          TABLE,
          in -> in[0] / in[1]);

  /** The wall at its most compressed cut. */
  static CompressedWall of(Wall wall, List<Cut> cuts) {
    CompressedWall worst = at(wall, cuts.get(0));
    for (Cut cut : cuts.subList(1, cuts.size())) {
      CompressedWall here = at(wall, cut);
      worst = here.stress > worst.stress ? here : worst;
    }
    return worst;
  }

  private static CompressedWall at(Wall wall, Cut cut) {
    return wall.edge() == Edge.ROUND ? round(wall, cut) : flat(wall, cut);
  }

  private static CompressedWall flat(Wall wall, Cut cut) {
    double first = -normal(cut, wall.from());
    double second = -normal(cut, wall.to());
    return new CompressedWall(wall, cut, Math.max(first, second), Math.min(first, second));
  }

  /** A round tube: its most compressed fibre, taken as if all of its wall were. */
  private static CompressedWall round(Wall tube, Cut cut) {
    Properties section = cut.section().properties();
    InternalForces f = cut.forces();
    double bending = Math.hypot(f.my(), f.mz()) * tube.width() / 2 / section.iy();
    double stress = bending - f.n() / section.area();
    return new CompressedWall(tube, cut, stress, stress);
  }

  private static double normal(Cut cut, Spot place) {
    Properties p = cut.section().properties();
    InternalForces f = cut.forces();
    return StressFormulas.NORMAL.value(
        f.n(), p.area(), f.my(), place.z(), p.iy(), f.mz(), place.y(), p.iz());
  }

  /** Whether its first end is the one that is compressed more. */
  boolean fromIsCompressedMore() {
    return -normal(cut, wall.from()) >= -normal(cut, wall.to());
  }

  /** Whether it buckles before it yields. */
  boolean isClassFour(double yield) {
    List<Step> steps = working(yield);
    return ratio() > steps.get(steps.size() - 1).result();
  }

  /** Width to thickness [1]. */
  double ratio() {
    return wall.width() / wall.thickness();
  }

  /** How near it is to its class 3 limit, apart from the yield strength [1]. */
  double use() {
    return ratio() / limit(1).result();
  }

  /** ψ: the compression at its less compressed edge over that at the other [1]. */
  double psi() {
    return other / stress;
  }

  /** Of an outstand, the edge that is compressed more. */
  Peak peak() {
    return freeEdgeIsFrom() == fromIsCompressedMore() ? Peak.FREE_EDGE : Peak.HELD_EDGE;
  }

  /** Whether its first end is its free edge: the one farther from every other wall. */
  boolean freeEdgeIsFrom() {
    return away(wall.from()) > away(wall.to());
  }

  private double away(Spot end) {
    return cut.section().walls().stream()
        .filter(another -> !another.equals(wall))
        .mapToDouble(
            another -> Math.min(distance(end, another.from()), distance(end, another.to())))
        .min()
        .orElse(0);
  }

  private static double distance(Spot one, Spot another) {
    return Math.hypot(one.y() - another.y(), one.z() - another.z());
  }

  private Step limit(double yieldFactor) {
    return wall.edge() == Edge.OUTSTAND
        ? WallLimits.outstand(yieldFactor, PlateFactor.outstand(psi(), peak()).result())
        : WallLimits.third(wall.edge(), yieldFactor, psi());
  }

  /** The lines of the calculation; the last is the class 3 limit. */
  List<Step> working(double yield) {
    Step epsilon = WallLimits.yieldFactor(yield);
    List<Step> steps = new ArrayList<>();
    steps.add(WIDTH_TO_THICKNESS.with(wall.width(), wall.thickness()));
    steps.add(epsilon);
    if (wall.edge() != Edge.ROUND) {
      steps.add(STRESS_RATIO.with(other, stress));
    }
    if (wall.edge() == Edge.OUTSTAND) {
      steps.add(PlateFactor.outstand(psi(), peak()));
    }
    steps.add(limit(epsilon.result()));
    return steps;
  }

  /** Its class as far as uniform compression shows it: a stricter one than its stresses ask. */
  String classInCompression(double yield) {
    return "class " + Math.min(3, WallLimits.classOf(wall, yield));
  }
}

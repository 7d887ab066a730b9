package rungwork.section;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A round tube, or a round bar when the bore is nil.
 *
 * <p>Torsion is exact: It = π(D⁴ − d⁴)/32, τ = T·D/(2 It). Shear of a tube: τ = 2 V cos φ / A on
 * the wall and a shear area of A/2 (thin ring); of a bar: τ = 4/3 · V cos φ / A at its surface and
 * a shear area of 0.9 A, by energy (V·S/(I·b), any textbook).
 *
 * @param outside D [m]
 * @param bore d [m]
 */
record Round(double outside, double bore) {
  /** So many points that the worst direction of bending is missed by 0.9 % at most. */
  private static final int POINTS = 24;

  static Round tube(double outside, double wall) {
    Guard.positive("outside diameter", outside, Scale.MM);
    Guard.positive("tube wall", wall, Scale.MM);
    if (2 * wall >= outside) {
      throw new ModelException(
          "wall %s leaves no bore in a tube of %s outside diameter; the wall must stay below %s"
              .formatted(Scale.MM.show(wall), Scale.MM.show(outside), Scale.MM.show(outside / 2)));
    }
    return new Round(outside, outside - 2 * wall);
  }

  static Round bar(double diameter) {
    return new Round(Guard.positive("bar diameter", diameter, Scale.MM), 0);
  }

  Section section() {
    Outline outline = outline();
    double area = outline.moments().area();
    double it = Math.PI / 32 * (Math.pow(outside, 4) - Math.pow(bore, 4));
    double shear = (isBar() ? 0.9 : 0.5) * area;
    ShearTorsion rest =
        new ShearTorsion(it, ShearTorsion.Resistance.NONE, new Spot(shear, shear), Spot.ORIGIN);
    return new Section(
        name(),
        Properties.of(outline, rest),
        IntStream.range(0, POINTS).mapToObj(i -> point(i, area, it)).toList(),
        walls(),
        isBar() ? Torsion.SOLID : Torsion.CLOSED,
        outline);
  }

  /**
   * With a second tube inside, both bent and twisted alike: each carries its share of a force as of
   * its second moment, so the outer surface is stressed most.
   */
  Section sleeved(Round sleeve) {
    Section outer = section();
    Section inner = sleeve.section();
    if (sleeve.outside > bore) {
      throw new ModelException(
          "sleeve %s does not go into %s, whose bore is %s"
              .formatted(inner.name(), outer.name(), Scale.MM.show(bore)));
    }
    Properties p = outer.properties();
    Properties q = inner.properties();
    Outline outline = outer.outline().and(inner.outline().loops());
    Spot shear = new Spot(p.shearY() + q.shearY(), p.shearZ() + q.shearZ());
    ShearTorsion rest =
        new ShearTorsion(p.it() + q.it(), ShearTorsion.Resistance.NONE, shear, Spot.ORIGIN);
    double share = p.iy() / (p.iy() + q.iy());
    return new Section(
        outer.name() + " with sleeve " + inner.name(),
        Properties.of(outline, rest),
        outer.points().stream().map(point -> point.times(share)).toList(),
        Stream.concat(outer.walls().stream(), inner.walls().stream()).toList(),
        Torsion.CLOSED,
        outline);
  }

  private boolean isBar() {
    return bore == 0;
  }

  private String name() {
    return isBar()
        ? Label.sized("round bar", outside)
        : Label.sized("CHS", outside, (outside - bore) / 2);
  }

  private Outline outline() {
    List<Segment> edge = circle(outside);
    return new Outline(isBar() ? List.of(edge) : List.of(edge, Outline.bore(circle(bore))));
  }

  private static List<Segment> circle(double diameter) {
    double r = diameter / 2;
    return Pen.at(new Spot(r, 0), 90).bend(r, 180).bend(r, 180).path();
  }

  private StressPoint point(int number, double area, double it) {
    Spot outward = Spot.polar(1, 2 * Math.PI * number / POINTS);
    Spot place = outward.times(outside / 2);
    double peak = (isBar() ? 4.0 / 3 : 2) / area;
    return new StressPoint(
        Label.sided(place, "surface"),
        place.y(),
        place.z(),
        -peak * outward.z(),
        peak * outward.y(),
        outside / 2 / it,
        0);
  }

  private List<Wall> walls() {
    if (isBar()) {
      return List.of();
    }
    Spot right = new Spot(-outside / 2, 0);
    Spot left = new Spot(outside / 2, 0);
    return List.of(new Wall("wall", outside, (outside - bore) / 2, Wall.Edge.ROUND, right, left));
  }
}

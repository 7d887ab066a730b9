package rungwork.section;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A thin-walled section as drawn, about any origin: its outline for everything that bending asks,
 * its walls' centre lines for shear and torsion.
 *
 * @param name the section's name
 * @param outline its exact outline
 * @param strips its walls' centre lines
 * @param marks where stresses are worth knowing
 * @param flats its flat walls
 * @param torsion how it carries twist
 * @param it its torsion constant where more than its walls is known of it [m⁴]
 */
record ThinShape(
    String name,
    Outline outline,
    List<Strip> strips,
    List<Mark> marks,
    List<Wall> flats,
    Torsion torsion,
    OptionalDouble it) {

  ThinShape(
      String name,
      Outline outline,
      List<Strip> strips,
      List<Mark> marks,
      List<Wall> flats,
      Torsion torsion) {
    this(name, outline, strips, marks, flats, torsion, OptionalDouble.empty());
  }

  /** The same shape with a torsion constant that knows more than its walls do [m⁴]. */
  ThinShape twisting(double constant) {
    return new ThinShape(name, outline, strips, marks, flats, torsion, OptionalDouble.of(constant));
  }

  /** The same shape with more marks. */
  ThinShape marked(List<Mark> more) {
    List<Mark> all = Stream.concat(marks.stream(), more.stream()).toList();
    return new ThinShape(name, outline, strips, all, flats, torsion, it);
  }

  Section section() {
    Spot centroid = outline.moments().centroid();
    Spot back = centroid.times(-1);
    ThinWalls walls = new ThinWalls(strips);
    double constant = it.orElseGet(walls::torsionConstant);
    ShearTorsion rest =
        new ShearTorsion(
            constant,
            walls.warping().resistance(),
            walls.shearAreas(),
            walls.shearCentre().minus(centroid));
    Outline centred = outline.centred();
    return new Section(
        name,
        Properties.of(centred, rest),
        points(walls, constant, back),
        flats.stream().map(flat -> flat.moved(back)).toList(),
        torsion,
        centred);
  }

  private List<StressPoint> points(ThinWalls walls, double constant, Spot back) {
    Flow alongY = walls.shear(new Spot(1, 0));
    Flow alongZ = walls.shear(new Spot(0, 1));
    Flow twist = walls.twist();
    Warping warping = walls.warping();
    return marks.stream()
        .map(
            mark -> {
              double t = strips.get(mark.wall()).thickness();
              Spot fibre = mark.fibre().plus(back);
              return new StressPoint(
                  Label.sided(fibre, mark.part()),
                  fibre.y(),
                  fibre.z(),
                  alongY.at(mark.wall(), mark.fraction()) / t,
                  alongZ.at(mark.wall(), mark.fraction()) / t,
                  (twist.at(mark.wall(), mark.fraction()) / t + mark.side() * t) / constant,
                  warping.at(mark));
            })
        .toList();
  }
}

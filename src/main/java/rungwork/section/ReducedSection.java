package rungwork.section;

import java.util.List;

/**
 * A section without parts of its walls, and without its holes: area and moments of what is left,
 * about its own centroid; torsion, warping and shear areas stay those of the whole. Its edges stay
 * where they were, also where an edge itself is gone, so that no modulus comes out too large.
 */
final class ReducedSection {
  private ReducedSection() {}

  static Section of(Section whole, List<Wall> gone) {
    Outline all = whole.net().map(Section.Net::outline).orElse(whole.outline());
    Outline left = all.and(gone.stream().map(ReducedSection::hole).toList());
    Spot shift = left.moments().centroid();
    Spot back = shift.times(-1);
    Properties p = whole.properties();
    ShearTorsion rest =
        new ShearTorsion(
            p.it(),
            new ShearTorsion.Resistance(p.iw(), p.iwAcross()),
            new Spot(p.shearY(), p.shearZ()),
            new Spot(p.shearCentreY(), p.shearCentreZ()).plus(back));
    Outline centred = left.centred();
    return new Section(
        whole.name() + ", effective",
        Properties.of(centred, rest).stiffened(p.stiffening()),
        whole.points().stream().map(point -> point.moved(back)).toList(),
        whole.walls().stream().map(wall -> wall.moved(back)).toList(),
        whole.torsion(),
        centred);
  }

  private static List<Segment> hole(Wall wall) {
    Line middle = new Line(wall.from(), wall.to());
    return Outline.bore(Outline.around(List.of(middle), wall.thickness()));
  }
}

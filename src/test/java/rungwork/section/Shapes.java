package rungwork.section;

import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;

/** Sections for tests: some of each kind, and random ones from a seed. */
final class Shapes {
  private Shapes() {}

  static List<Section> someOfEachKind() {
    return List.of(
        Section.rectangularTube(mm(80), mm(40), mm(3)),
        Section.rectangularTube(mm(40), mm(60), mm(3), mm(4)),
        Section.squareTube(mm(50), mm(5)),
        Section.hotFinishedTube(mm(60), mm(80), mm(5)),
        Section.roundTube(mm(60.3), mm(3.2)),
        Section.roundBar(mm(20)),
        Section.flatBar(mm(40), mm(8)),
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)),
        Section.foldedChannel(mm(100), mm(50), mm(4), mm(0)),
        Section.boxedChannel(mm(80), mm(40), mm(3), mm(3)),
        Section.rolledChannel(mm(80), mm(50), RolledWalls.of(mm(4), mm(7), mm(10))),
        upn80(),
        FoldedProfile.of(mm(2), mm(2)).topHat(mm(40), mm(50), mm(90)),
        FoldedProfile.of(mm(2), mm(3)).lippedChannel(mm(80), mm(40), mm(12)),
        FoldedProfile.of(mm(3), mm(3)).zed(mm(80), mm(40)),
        gutter(),
        Section.rolledTee(mm(50), mm(6)),
        BuiltUp.tee(mm(60), mm(50), mm(4), mm(6)),
        BuiltUp.channel(mm(80), mm(40), mm(3), mm(3)).platedOn(mm(100), mm(4)),
        BuiltUp.channel(mm(80), mm(40), mm(3), mm(3)).platedIn(mm(4)),
        BuiltUp.channel(mm(80), mm(40), mm(3), mm(3)).toeToToe(),
        BuiltUp.rolledChannel(mm(80), mm(45), RolledWalls.eightPercent(mm(6), mm(8), mm(8), mm(4)))
            .toeToToe(),
        BuiltUp.tube(mm(80), mm(40), mm(3)).sleeved(mm(70), mm(30), mm(3)),
        BuiltUp.tube(mm(80), mm(40), mm(3)).plated(mm(28), mm(4)),
        BuiltUp.tube(mm(80), mm(40), mm(3)).plated(mm(20), mm(4)),
        BuiltUp.roundTube(mm(60), mm(3)).sleeved(mm(50), mm(3)),
        Section.rolledChannel(
            mm(152.4), mm(48.8), RolledWalls.oneInSix(mm(5.08), mm(8.71), mm(7.62), mm(3.05))),
        Section.angle(mm(50), mm(50), mm(5), mm(7)),
        Section.angle(mm(80), mm(40), mm(6), mm(7)));
  }

  /** A rolled channel with tapered flanges. */
  static Section upn80() {
    return Section.rolledChannel(
        mm(80), mm(45), RolledWalls.eightPercent(mm(6), mm(8), mm(8), mm(4)));
  }

  /** A fold with bends that are not square. */
  static Section gutter() {
    return FoldedProfile.of(mm(2), mm(4))
        .heading(deg(20))
        .leg(mm(25))
        .bend(deg(75))
        .leg(mm(50))
        .bend(deg(120))
        .leg(mm(30))
        .bend(deg(-40))
        .leg(mm(20))
        .section("gutter");
  }

  private static ClosedChannel closed() {
    ThinShape open = new FoldedChannel(0.08, 0.04, 0.003, 0.003).open();
    return new ClosedChannel(open, 0.08, 0.04, 0.003, 0.006);
  }

  private static StrengthenedTube strengthened() {
    return new StrengthenedTube(RectangularTube.coldFormed(0.08, 0.04, 0.003));
  }

  static List<ThinShape> thin() {
    return List.of(
        new Tee(0.05, 0.05, 0.006, 0.006).rolled(),
        new Tee(0.06, 0.05, 0.004, 0.006).welded(),
        closed().platedOn(0.1, 0.004),
        closed().platedOn(0.078, 0.002),
        closed().platedIn(0.004),
        closed().toeToToe(),
        strengthened().sleeved(RectangularTube.coldFormed(0.07, 0.03, 0.003)),
        strengthened().plated(0.028, 0.004),
        strengthened().plated(0.02, 0.004),
        FoldedProfile.of(mm(2), mm(3))
            .leg(mm(25))
            .bend(deg(75))
            .leg(mm(50))
            .bend(deg(-120))
            .leg(mm(30))
            .shape("fold"),
        RectangularTube.coldFormed(0.08, 0.04, 0.003).shape(),
        RectangularTube.coldFormed(0.04, 0.1, 0.004).shape(),
        RectangularTube.coldFormed(0.05, 0.05, 0.002).shape(),
        new FoldedChannel(0.08, 0.04, 0.003, 0.003).open(),
        new FoldedChannel(0.06, 0.06, 0.002, 0.004).open(),
        new FoldedChannel(0.08, 0.04, 0.003, 0.003).boxed(),
        new FoldedChannel(0.05, 0.07, 0.004, 0.004).boxed(),
        new RolledChannel(0.08, 0.05, new RolledWalls(0.004, 0.007, 0.010)).shape(),
        new RolledChannel(0.08, 0.045, RolledWalls.eightPercent(mm(6), mm(8), mm(8), mm(4)))
            .shape());
  }

  /** A tube, channel or angle of random proportions. */
  static ThinShape random(Random random) {
    double height = 0.03 + 0.1 * random.nextDouble();
    double width = 0.03 + 0.1 * random.nextDouble();
    double wall = Math.min(height, width) * (0.03 + 0.07 * random.nextDouble());
    double radius = wall * random.nextDouble();
    return switch (random.nextInt(5)) {
      case 0 -> RectangularTube.coldFormed(height, width, wall).shape();
      case 1 -> new FoldedChannel(height, width, wall, radius).open();
      case 2 -> new FoldedChannel(height, width, wall, radius).boxed();
      case 3 -> new RolledChannel(height, width, new RolledWalls(wall, 1.3 * wall, radius)).shape();
      default -> new Angle(height, width, wall, radius).shape();
    };
  }

  /** The same shape, every length times a factor. */
  static ThinShape scaled(ThinShape shape, double factor) {
    List<List<Segment>> loops =
        shape.outline().loops().stream()
            .map(loop -> loop.stream().map(piece -> scaled(piece, factor)).toList())
            .toList();
    List<Strip> strips =
        shape.strips().stream()
            .map(s -> new Strip(scaled(s.path(), factor), factor * s.thickness(), s.filled()))
            .toList();
    ThinShape plain =
        new ThinShape(
            shape.name(), new Outline(loops), strips, List.of(), List.of(), shape.torsion());
    return shape.it().isEmpty()
        ? plain
        : plain.twisting(Math.pow(factor, 4) * shape.it().getAsDouble());
  }

  private static Segment scaled(Segment piece, double factor) {
    if (piece instanceof Arc arc) {
      return new Arc(arc.centre().times(factor), arc.radius() * factor, arc.from(), arc.angle());
    }
    return new Line(piece.start().times(factor), piece.end().times(factor));
  }
}

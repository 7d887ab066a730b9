package rungwork.section;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The shapes that a file of sizes can hold, and the dimensions that each asks. */
enum SizeShape {
  SQUARE_TUBE("side, wall, corner", row -> tube(row, row.length("side"), row.length("side"))),
  RECTANGULAR_TUBE(
      "height, width, wall, corner", row -> tube(row, row.length("height"), row.length("width"))),
  ROUND_TUBE(
      "outside, wall", row -> Round.tube(row.length("outside"), row.length("wall")).section()),
  PARALLEL_CHANNEL("depth, flange, web, thickness, root", SizeShape::parallel),
  EIGHT_PERCENT_CHANNEL(
      "depth, flange, web, thickness, root, toe",
      row -> tapered(row, 0.08, RolledWalls.Place.HALF_THE_WIDTH)),
  ONE_IN_SIX_CHANNEL(
      "depth, flange, web, thickness, root, toe",
      row -> tapered(row, 1.0 / 6, RolledWalls.Place.HALF_THE_OVERHANG)),
  FOLDED_CHANNEL("depth, flange, wall, inside", SizeShape::folded),
  ANGLE("height, width, wall, root", SizeShape::angle),
  FLAT("height, width", row -> new FlatBar(row.length("height"), row.length("width")).section());

  private final List<String> asks;
  private final Function<SizeRow, Section> maker;

  SizeShape(String asks, Function<SizeRow, Section> maker) {
    this.asks = List.of(asks.split(", "));
    this.maker = maker;
  }

  /** The shape of this name. */
  static Optional<SizeShape> of(String word) {
    return Arrays.stream(values()).filter(shape -> shape.word().equalsIgnoreCase(word)).findAny();
  }

  static String words() {
    return Arrays.stream(values()).map(SizeShape::word).collect(Collectors.joining(", "));
  }

  /** The dimensions of all shapes, without units. */
  static Set<String> dimensions() {
    return Arrays.stream(values())
        .flatMap(shape -> shape.asks.stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Whether the shape has a use for a dimension. */
  boolean asks(String dimension) {
    return asks.contains(dimension);
  }

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  Section section(SizeRow row) {
    return maker.apply(row);
  }

  /** Corners as the row states them; without a figure as EN 10219-2 takes them. */
  private static Section tube(SizeRow row, double height, double width) {
    double wall = row.length("wall");
    RectangularTube tube =
        row.optionalLength("corner").isPresent()
            ? RectangularTube.cornered(
                height, width, wall, row.optionalLength("corner").getAsDouble())
            : RectangularTube.coldFormed(height, width, wall);
    return tube.shape().section();
  }

  private static Section parallel(SizeRow row) {
    return rolled(row, RolledWalls.Taper.NONE);
  }

  private static Section tapered(SizeRow row, double slope, RolledWalls.Place place) {
    return rolled(row, new RolledWalls.Taper(slope, row.length("toe"), place));
  }

  private static Section rolled(SizeRow row, RolledWalls.Taper taper) {
    RolledWalls walls =
        new RolledWalls(row.length("web"), row.length("thickness"), row.length("root"), taper);
    return new RolledChannel(row.length("depth"), row.length("flange"), walls).shape().section();
  }

  private static Section folded(SizeRow row) {
    return new FoldedChannel(
            row.length("depth"), row.length("flange"), row.length("wall"), row.length("inside"))
        .open()
        .section();
  }

  private static Section angle(SizeRow row) {
    return new Angle(
            row.length("height"), row.length("width"), row.length("wall"), row.length("root"))
        .shape()
        .section();
  }
}

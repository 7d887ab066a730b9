package rungwork.check;

import java.util.Comparator;
import rungwork.fault.Scale;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;

/**
 * The class of a wall when its section is bent about y, by the part α of its width that is
 * compressed when all of it yields, and by the stress ratio ψ while it is elastic (EN
 * 1993-1-1:2005, table 5.2, from memory; the tests hold its corner values).
 *
 * <p>Only for sections whose upper and lower halves are alike: both neutral axes are then at the
 * centroid.
 *
 * @param wall the wall
 * @param compressed α: the compressed part of its width [1]
 * @param ratio ψ: stress at its less compressed edge over that at the other [1]
 */
record BendingClass(Wall wall, double compressed, double ratio) {
  /** Halves alike: their difference is rounding, a part of the section's height [1]. */
  private static final double ALIKE = 1e-6;

  /** Whether a section's upper and lower halves are alike. */
  static boolean asked(Section section) {
    return section.walls().stream()
        .allMatch(wall -> section.walls().stream().anyMatch(other -> isMirror(wall, other)));
  }

  private static boolean isMirror(Wall wall, Wall other) {
    double near = ALIKE * (1e-3 + Math.abs(wall.from().z()) + Math.abs(wall.to().z()));
    double sum = wall.from().z() + wall.to().z() + other.from().z() + other.to().z();
    return Math.abs(sum) < near && Math.abs(wall.width() - other.width()) < near;
  }

  /** A wall of a section of like halves, its upper half compressed. */
  static BendingClass of(Wall wall) {
    if (wall.edge() == Edge.ROUND) {
      return new BendingClass(wall, 1, 1);
    }
    double high = Math.max(wall.from().z(), wall.to().z());
    double low = Math.min(wall.from().z(), wall.to().z());
    double part = low >= 0 ? 1 : high <= 0 ? 0 : high / (high - low);
    return new BendingClass(wall, part, high == 0 ? 0 : low / high);
  }

  /** How near it is to the limit of class 3 [1]. */
  double use(double epsilon) {
    return compressed == 0 ? 0 : wall.width() / wall.thickness() / limit(3, epsilon);
  }

  int number(double epsilon) {
    double slenderness = wall.width() / wall.thickness();
    for (int number = 1; number <= 3; number++) {
      if (compressed == 0 || slenderness <= limit(number, epsilon)) {
        return number;
      }
    }
    return 4;
  }

  /** The largest width-to-thickness of a class. */
  double limit(int number, double epsilon) {
    if (number == 3) {
      return WallLimits.third(wall.edge(), epsilon, Math.min(1, ratio)).result();
    }
    WallLimits uniform = WallLimits.of(wall.edge());
    double base = number == 1 ? uniform.first() : uniform.second();
    return switch (wall.edge()) {
      case ROUND -> base * epsilon * epsilon;
      case OUTSTAND -> base * epsilon / compressed;
      case INTERNAL -> internal(number) * epsilon;
    };
  }

  /** 396/(13α − 1) and 456/(13α − 1); from α = ½ down 36/α and 41.5/α. */
  private double internal(int number) {
    return compressed > 0.5
        ? (number == 1 ? 396 : 456) / (13 * compressed - 1)
        : (number == 1 ? 36 : 41.5) / compressed;
  }

  /** The worst wall of a section, in words. */
  static String words(Section section, double yield) {
    double epsilon = WallLimits.yieldFactor(yield).result();
    return section.walls().stream()
        .map(BendingClass::of)
        .max(
            Comparator.<BendingClass>comparingInt(wall -> wall.number(epsilon))
                .thenComparingDouble(wall -> wall.use(epsilon)))
        .map(wall -> wall.words(epsilon))
        .orElse("class not checked: a solid bar has no thin walls, or its walls are not known");
  }

  private String words(double epsilon) {
    return "class %d bent about y: %s, %s = %s; classes end at %s, %s and %s (%s, α = %s)"
        .formatted(
            number(epsilon),
            wall.name(),
            wall.edge() == Edge.ROUND ? "d/t" : "c/t",
            Scale.NUMBER.number(wall.width() / wall.thickness(), 3),
            Scale.NUMBER.number(limit(1, epsilon), 3),
            Scale.NUMBER.number(limit(2, epsilon), 3),
            Scale.NUMBER.number(limit(3, epsilon), 3),
            WallLimits.TABLE,
            Scale.NUMBER.number(compressed, 3));
  }
}

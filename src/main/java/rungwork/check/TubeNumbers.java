package rungwork.check;

import java.util.Arrays;
import java.util.List;
import rungwork.fault.ModelException;
import rungwork.frame.Stock;
import rungwork.material.RatedMaterial;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.Torsion;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;

/**
 * The numbers of a member of closed section whose walls all count: combined stress and column, by
 * the formulas of {@link CombinedStress} and {@link ColumnBuckling}. Where a wall could buckle
 * before it yields the checks are made whole.
 */
final class TubeNumbers implements MemberChecks.Numbers {
  private static final String STRESS = new CombinedStress().what();
  private static final double ROUNDING = 1e-9;

  /** Rounding of what is compared with a bound [1]. */
  private static final double SLACK = 1 + 1e-9;

  private final WholeNumbers whole;
  private final Section section;
  private final RatedMaterial material;
  private final StressFactors stresses;
  private final SlenderWall[] slender;
  private final LeastSection least;
  private final boolean covered;
  private final BendingAxis strong;
  private final double[] reduced;
  private final Column[] columns;
  private final Column[] leastColumns;
  private final List<String> doubts;
  private final boolean welded;

  /** What the last cuts hold at most: compression, strong and weak moment. */
  private final double[] largest = new double[3];

  private String what = "";

  TubeNumbers(WholeNumbers whole) {
    this.whole = whole;
    section = whole.stock().section();
    material = (RatedMaterial) whole.stock().material();
    stresses = StressFactors.of(section);
    strong = BendingAxis.strong(section.properties());
    columns = columns(section.properties().area());
    reduced = reduced();
    doubts = TubeDoubts.of(whole.member(), section, material);
    slender = SteelRange.of(material).isPresent() ? new SlenderWall[0] : slender();
    welded = material.strength().weldedYield() != material.strength().yield();
    List<Wall> walls = Arrays.stream(slender).map(one -> one.wall).toList();
    least = new LeastSection(section, walls, material.strength().yield());
    leastColumns = least.exists() ? columns(least.area()) : columns;
    covered = least.exists() && walls.stream().allMatch(EffectiveWidth::covers);
  }

  /** Whether a stock is of this kind. */
  static boolean covers(Stock stock) {
    Section section = stock.section();
    return section.torsion() == Torsion.CLOSED
        && section.net().isEmpty()
        && !section.points().isEmpty()
        && stock.material() instanceof RatedMaterial
        && section.walls().stream().allMatch(wall -> wall.edge() != Edge.OUTSTAND);
  }

  private Column[] columns(double area) {
    return new Column[] {
      column(area, strong, Column.Axis.STRONG), column(area, strong.other(), Column.Axis.WEAK)
    };
  }

  private Column column(double area, BendingAxis axis, Column.Axis letters) {
    return new Column(
        material.elasticity().youngsModulus(),
        area,
        axis.secondMoment(section.properties()),
        axis.length(whole.member().buckling()),
        letters);
  }

  private double[] reduced() {
    double[] all = new double[4];
    for (int i = 0; i < 2; i++) {
      List<Step> steps = columns[i].reduction(ColumnBuckling.CURVE, material.strength().yield());
      all[2 * i] = steps.get(1).result();
      all[2 * i + 1] = steps.get(3).result();
    }
    return all;
  }

  private SlenderWall[] slender() {
    double epsilon = WallLimits.yieldFactor(material.strength().yield()).result();
    return section.walls().stream()
        .filter(wall -> wall.edge() == Edge.INTERNAL)
        .map(wall -> new SlenderWall(wall, section.properties(), epsilon))
        .filter(SlenderWall::canBuckle)
        .toArray(SlenderWall[]::new);
  }

  @Override
  public double utilisation(double[][] cuts, int[] counts, MemberChecks.Asked asked) {
    double negligible = LoadedMember.NEGLIGIBLE_STRAIN * material.elasticity().youngsModulus();
    for (SlenderWall wall : slender) {
      if (wall.buckles(cuts, counts, negligible)) {
        double utilisation = whole.utilisation(cuts, counts, asked);
        what = whole.what();
        return utilisation;
      }
    }
    measure(cuts, counts);
    double gamma = asked.factor().value();
    double stress = stress(cuts, counts, asked.noInterest() / gamma) * gamma;
    double column = largest[0] > section.properties().area() * negligible ? column(gamma) : 0;
    what = column > stress ? ColumnBuckling.WHAT : STRESS;
    return Math.max(stress, column);
  }

  @Override
  public boolean canExceed(double[] bounds, int at, int stride, MemberChecks.Asked asked) {
    refuseElsewhere(bounds.length, at, stride);
    double n = bounds[at + stride];
    double my = bounds[at + 5 * stride] + n * least.shiftZ();
    double mz = bounds[at + 6 * stride] + n * least.shiftY();
    double sigma = least.normalStress(n, my, mz);
    double tau =
        stresses.shearBound(
            bounds[at + 2 * stride], bounds[at + 3 * stride], bounds[at + 4 * stride]);
    double gamma = asked.factor().value() * SLACK;
    double bound = asked.noInterest() * lowestStrength() / gamma;
    return !covered
        || !(sigma * sigma + 3 * tau * tau <= bound * bound)
        || bounds[at] > 0 && !(leastColumn(gamma, bounds[at], my, mz) <= asked.noInterest());
  }

  private static void refuseElsewhere(int count, int at, int stride) {
    if (at < 0 || stride < 1 || at + 6L * stride >= count) {
      throw new ModelException(
          "7 bounds of forces are asked for from number %d on, %d apart; there are %d numbers"
              .formatted(at, stride, count));
    }
  }

  private double lowestStrength() {
    return Math.min(material.strength().yield(), material.strength().weldedYield());
  }

  /** A column of what is left at least, as slender as the whole. */
  private double leastColumn(double gamma, double force, double my, double mz) {
    boolean alongY = strong == BendingAxis.Y;
    return new BeamColumn(
            force,
            material.strength().yield(),
            gamma,
            least(0, strong, alongY ? my : mz),
            least(1, strong.other(), alongY ? mz : my))
        .utilisation(reduced);
  }

  private BeamColumn.Bent least(int which, BendingAxis axis, double moment) {
    return new BeamColumn.Bent(
        leastColumns[which], ColumnBuckling.CURVE, moment, least.modulus(axis));
  }

  private void measure(double[][] cuts, int[] counts) {
    int first = strong == BendingAxis.Y ? 5 : 6;
    int second = 11 - first;
    Arrays.fill(largest, Double.NEGATIVE_INFINITY);
    for (int beam = 0; beam < counts.length; beam++) {
      double[] from = cuts[beam];
      for (int at = 0; at < WholeNumbers.CUT * counts[beam]; at += WholeNumbers.CUT) {
        largest[0] = Math.max(largest[0], -from[at + 1]);
        largest[1] = Math.max(largest[1], Math.abs(from[at + first]));
        largest[2] = Math.max(largest[2], Math.abs(from[at + second]));
      }
    }
  }

  /**
   * The highest equivalent stress over the yield strength there; places up to a bound are let be.
   */
  private double stress(double[][] cuts, int[] counts, double noInterest) {
    double bound = noInterest * lowestStrength();
    double highest = 0;
    double offset = 0;
    for (int beam = 0; beam < counts.length; beam++) {
      double[] from = cuts[beam];
      for (int i = 0; i < counts[beam]; i++) {
        int at = WholeNumbers.CUT * i;
        if (stresses.canExceed(from, at + 1, bound)) {
          double along = offset + from[at] * whole.length(beam);
          highest = Math.max(highest, stresses.highest(from, at + 1) / strength(along));
        }
      }
      offset += whole.length(beam);
    }
    return highest;
  }

  /** Where both count, the welded one is the lower. */
  private double strength(double along) {
    double plain = material.strength().yield();
    return welded && CombinedStress.distance(along, whole.member()) <= Member.Weld.ZONE + ROUNDING
        ? Math.min(plain, material.strength().weldedYield())
        : plain;
  }

  private double column(double gamma) {
    Properties p = section.properties();
    return new BeamColumn(
            largest[0],
            material.strength().yield(),
            gamma,
            new BeamColumn.Bent(columns[0], ColumnBuckling.CURVE, largest[1], strong.modulus(p)),
            new BeamColumn.Bent(
                columns[1], ColumnBuckling.CURVE, largest[2], strong.other().modulus(p)))
        .utilisation(reduced);
  }

  @Override
  public String what() {
    return what;
  }

  @Override
  public List<String> doubts() {
    return doubts;
  }

  @Override
  public void forget() {
    whole.forget();
  }

  /** A flat wall that is slender enough to buckle before it yields under some stress. */
  private static final class SlenderWall {
    private final Wall wall;
    private final double epsilon;
    private final double[] edges = new double[6];

    SlenderWall(Wall wall, Properties p, double epsilon) {
      this.wall = wall;
      this.epsilon = epsilon;
      double[] places = {wall.from().y(), wall.from().z(), wall.to().y(), wall.to().z()};
      for (int end = 0; end < 2; end++) {
        double y = places[2 * end];
        double z = places[2 * end + 1];
        for (int force = 0; force < 3; force++) {
          double n = force == 0 ? -1 : 0;
          double my = force == 1 ? -1 : 0;
          double mz = force == 2 ? -1 : 0;
          edges[3 * end + force] =
              StressFormulas.NORMAL.value(n, p.area(), my, z, p.iy(), mz, y, p.iz());
        }
      }
    }

    boolean canBuckle() {
      return isBeyond(1);
    }

    private boolean isBeyond(double ratio) {
      double limit = WallLimits.third(Edge.INTERNAL, epsilon, ratio).result();
      return wall.width() / wall.thickness() > limit;
    }

    /** Where it is compressed most it is beyond its limit, or the next best cut may be. */
    boolean buckles(double[][] cuts, int[] counts, double negligible) {
      double most = Double.NEGATIVE_INFINITY;
      double other = 0;
      for (int beam = 0; beam < counts.length; beam++) {
        double[] from = cuts[beam];
        for (int at = 0; at < WholeNumbers.CUT * counts[beam]; at += WholeNumbers.CUT) {
          double one = edge(from, at, 0);
          double two = edge(from, at, 3);
          if (Math.max(one, two) > most) {
            most = Math.max(one, two);
            other = Math.min(one, two);
          }
        }
      }
      return most > negligible && isBeyond(other / most);
    }

    private double edge(double[] from, int at, int end) {
      return edges[end] * from[at + 1]
          + edges[end + 1] * from[at + 5]
          + edges[end + 2] * from[at + 6];
    }
  }
}

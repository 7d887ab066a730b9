package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.Member.Weld;
import rungwork.check.MemberChecks.Asked;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.material.RatedMaterial;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.solve.InternalForces;

/** A tube's numbers against its checks made whole, and against sums by hand. */
class TubeNumbersTest {
  private static final int CUT = 7;
  private static final double[] LENGTHS = {0.4, 0.7};
  private static final RatedMaterial SOFT_AT_WELDS = Examples.rated("soft", 355e6, 250e6);

  /** Forces at cuts of two beams, and how many cuts each has. */
  private record Cuts(double[][] forces, int[] counts) {
    static Cuts of(double fraction, double... forces) {
      double[] one = new double[CUT];
      one[0] = fraction;
      System.arraycopy(forces, 0, one, 1, forces.length);
      return new Cuts(new double[][] {one, {}}, new int[] {1, 0});
    }

    static Cuts random(Random random) {
      double[][] forces = new double[2][CUT * 5];
      double push = random.nextInt(3) * 40e3;
      for (double[] beam : forces) {
        for (int at = 0; at < beam.length; at += CUT) {
          double[] cut = {
            at / CUT / 4.0,
            push * (random.nextDouble() - 0.8),
            4e3 * random.nextGaussian(),
            4e3 * random.nextGaussian(),
            300 * random.nextGaussian(),
            1500 * random.nextGaussian(),
            700 * random.nextGaussian()
          };
          System.arraycopy(cut, 0, beam, at, CUT);
        }
      }
      return new Cuts(forces, new int[] {5, 5});
    }

    /** Compression, then each force without its sign, at their largest. */
    double[] bounds() {
      double[] most = new double[CUT];
      most[0] = Double.NEGATIVE_INFINITY;
      for (int beam = 0; beam < forces.length; beam++) {
        for (int at = 0; at < CUT * counts[beam]; at += CUT) {
          most[0] = Math.max(most[0], -forces[beam][at + 1]);
          for (int force = 1; force < CUT; force++) {
            most[force] = Math.max(most[force], Math.abs(forces[beam][at + force]));
          }
        }
      }
      return most;
    }

    List<Cut> cuts(Stock stock, List<Beam> beams) {
      List<Cut> all = new ArrayList<>();
      double offset = 0;
      for (int beam = 0; beam < forces.length; beam++) {
        for (int at = 0; at < CUT * counts[beam]; at += CUT) {
          double[] f = forces[beam];
          InternalForces internal =
              new InternalForces(f[at + 1], f[at + 2], f[at + 3], f[at + 4], f[at + 5], f[at + 6]);
          double along = offset + f[at] * LENGTHS[beam];
          all.add(new Cut(beams.get(beam), stock.section(), f[at], along, internal));
        }
        offset += LENGTHS[beam];
      }
      return all;
    }
  }

  private static Member member(double length) {
    return new Member(
        "rail",
        List.of("front", "back"),
        new BucklingLengths(length, 0.8 * length, "stated"),
        List.of(new Weld("foot", 0), new Weld("step", 0.4)));
  }

  private static List<Beam> beams(Stock stock) {
    return List.of(Beam.rigid("front", "a", "b", stock), Beam.rigid("back", "b", "c", stock));
  }

  private static MemberChecks.Numbers numbers(Member member, Stock stock) {
    Map<Beam, Double> beams = new LinkedHashMap<>();
    for (int i = 0; i < LENGTHS.length; i++) {
      beams.put(beams(stock).get(i), LENGTHS[i]);
    }
    MemberChecks.Numbers numbers = MemberChecks.numbers(member, beams, stock);
    assertTrue(numbers instanceof TubeNumbers);
    return numbers;
  }

  private static Stock stock(Random random) {
    double wall = 1.2 + 0.4 * random.nextInt(6);
    Section section =
        random.nextInt(5) == 0
            ? Section.roundTube(mm(40 + random.nextInt(60)), mm(wall))
            : Section.rectangularTube(
                mm(50 + random.nextInt(90)), mm(30 + random.nextInt(60)), mm(wall));
    return new Stock(section, random.nextBoolean() ? Examples.S355 : SOFT_AT_WELDS);
  }

  /** Every check with its working, without the numbers' own code. */
  private static List<Check> whole(Member member, Stock stock, Cuts cuts, DesignFactor factor) {
    return MemberChecks.all(
        new LoadedMember(
            member, "", stock, stock.section(), cuts.cuts(stock, beams(stock)), factor));
  }

  private static Check worst(List<Check> checks) {
    return checks.stream()
        .filter(CheckSheet::canGovern)
        .reduce((a, b) -> b.utilisation().orElse(0) > a.utilisation().orElse(0) ? b : a)
        .orElseThrow();
  }

  private static double utilisation(MemberChecks.Numbers numbers, Cuts cuts, Asked asked) {
    return numbers.utilisation(cuts.forces, cuts.counts, asked);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void numbers_are_those_of_the_checks_made_whole_and_bounds_hide_nothing(long seed) {
    Random random = new Random(seed);
    DesignFactor factor = new DesignFactor(1 + random.nextDouble(), "test");
    for (int i = 0; i < 60; i++) {
      Member member = member(0.3 + 2 * random.nextDouble());
      Stock stock = stock(random);
      Cuts cuts = Cuts.random(random);
      MemberChecks.Numbers numbers = numbers(member, stock);
      List<Check> checks = whole(member, stock, cuts, factor);
      Check worst = worst(checks);
      double highest = worst.utilisation().orElseThrow();
      assertEquals(1, utilisation(numbers, cuts, new Asked(factor, 0)) / highest, 1e-9);
      assertTrue(worst.what().startsWith(numbers.what()), worst.what());
      Asked lower = new Asked(factor, highest * (1 - 1e-12));
      assertTrue(numbers.canExceed(cuts.bounds(), 0, 1, lower), "seed " + seed + ", " + i);
      assertDoubted(checks, numbers.doubts());
    }
  }

  /** What has no number is named; a number outside the range of its rule has a doubt behind it. */
  private static void assertDoubted(List<Check> checks, List<String> doubts) {
    for (Check check : checks) {
      boolean named = doubts.stream().anyMatch(doubt -> doubt.startsWith(check.what()));
      boolean numbered = check.utilisation().isPresent() && !doubts.isEmpty();
      assertTrue(check.made() || named || numbered, check + " is not among " + doubts);
    }
  }

  /** Walls 3 mm: none buckles, so that the bounds of one force alone are the sums by hand. */
  @Test
  void a_pull_and_a_bend_alone_are_bounded_by_their_own_stress() {
    Stock stock = new Stock(Examples.TUBE, Examples.S355);
    double area = Examples.TUBE.properties().area();
    double modulus = Examples.TUBE.properties().wely();
    assertBounded(stock, 100e3 / area / 355e6, Cuts.of(0.5, 100e3));
    assertBounded(stock, 2e3 / modulus / 355e6, Cuts.of(0.5, 0, 0, 0, 0, 2e3));
    assertBounded(
        stock, 2e3 / Examples.TUBE.properties().welz() / 355e6, Cuts.of(0.5, 0, 0, 0, 0, 0, -2e3));
  }

  private static void assertBounded(Stock stock, double byHand, Cuts cuts) {
    MemberChecks.Numbers numbers = numbers(member(1), stock);
    assertEquals(byHand, utilisation(numbers, cuts, new Asked(DesignFactor.NONE, 0)), 1e-9);
    assertTrue(numbers.canExceed(cuts.bounds(), 0, 1, asked(byHand * 0.999)));
    assertFalse(numbers.canExceed(cuts.bounds(), 0, 1, asked(byHand * 1.001)));
  }

  private static Asked asked(double noInterest) {
    return new Asked(DesignFactor.NONE, noInterest);
  }

  @Test
  void a_push_is_bounded_by_the_column() {
    Stock stock = new Stock(Examples.TUBE, Examples.S355);
    Cuts push = Cuts.of(0.5, -60e3);
    double column =
        Examples.only(ColumnBuckling.WHAT, whole(member(2), stock, push, DesignFactor.NONE))
            .utilisation()
            .orElseThrow();
    MemberChecks.Numbers numbers = numbers(member(2), stock);
    assertEquals(column, utilisation(numbers, push, asked(0)), 1e-9);
    assertEquals(ColumnBuckling.WHAT, numbers.what());
    assertTrue(numbers.canExceed(push.bounds(), 0, 1, asked(column * 0.999)));
    assertFalse(numbers.canExceed(push.bounds(), 0, 1, asked(column * 1.001)));
  }

  @Test
  void beside_a_weld_the_lower_strength_counts() {
    Stock stock = new Stock(Examples.TUBE, SOFT_AT_WELDS);
    double stress = 100e3 / Examples.TUBE.properties().area();
    MemberChecks.Numbers numbers = numbers(member(1), stock);
    assertEquals(stress / 250e6, utilisation(numbers, Cuts.of(0.0625, 100e3), asked(0)), 1e-9);
    assertEquals(stress / 355e6, utilisation(numbers, Cuts.of(0.0627, 100e3), asked(0)), 1e-9);
    assertEquals("combined stress", numbers.what());
  }

  /**
   * 120 × 60 × 2 in S355, its high walls alone: c/t = (120 − 2·3)/2 = 57, ε = √(235/355) = 0.8136,
   * λ̄p = 57/(28.4·0.8136·2) = 1.2334, ρ = (1.2334 − 0.22)/1.2334² = 0.6662; each loses 33.38 % of
   * 57·4 mm² = 228 mm², 76.11 mm². They reach to y = 30 mm and z = 57 + 1 = 58 mm.
   */
  @Test
  void the_least_of_a_slender_tube_by_hand() {
    Section thin = Section.rectangularTube(mm(120), mm(60), mm(2));
    List<Wall> high = thin.walls().stream().filter(wall -> wall.width() > 0.1).toList();
    LeastSection least = new LeastSection(thin, high, 355e6);
    Properties p = thin.properties();
    double gone = 2 * 76.11e-6;
    double area = p.area() - gone;
    double shiftY = gone * 0.030 / area;
    double shiftZ = gone * 0.058 / area;
    double iy = p.iy() - gone * 0.058 * 0.058 - area * shiftZ * shiftZ;
    double iz = p.iz() - gone * 0.030 * 0.030 - area * shiftY * shiftY;
    double product = gone * 0.030 * 0.058 + area * shiftY * shiftZ;
    assertEquals(2, high.size());
    assertClose(area, least.area());
    assertClose(shiftY, least.shiftY());
    assertClose(shiftZ, least.shiftZ());
    assertClose(iy / (0.060 + shiftZ), least.modulus(BendingAxis.Y));
    assertClose(iz / (0.030 + shiftY), least.modulus(BendingAxis.Z));
    assertClose(1 / area, least.normalStress(1, 0, 0));
    assertTrue(least.exists());
    double corner = (p.iz() * (0.060 + shiftZ) + product * (0.030 + shiftY));
    double atCorner = corner / (iy * iz - product * product);
    assertTrue(least.normalStress(0, 1, 0) <= atCorner);
    assertTrue(least.normalStress(0, 1, 0) >= 0.9 * atCorner);
    double acrossCorner = (p.iy() * (0.030 + shiftY) + product * (0.060 + shiftZ));
    double acrossAtCorner = acrossCorner / (iy * iz - product * product);
    assertTrue(least.normalStress(0, 0, 1) <= acrossAtCorner);
    assertTrue(least.normalStress(0, 0, 1) >= 0.9 * acrossAtCorner);
  }

  private static void assertClose(double byHand, double found) {
    assertEquals(1, found / byHand, 1e-3);
  }

  @Test
  void a_wall_too_slender_for_any_rule_leaves_nothing_certain() {
    Section foil = Section.rectangularTube(mm(300), mm(60), mm(0.5));
    Stock stock = new Stock(foil, Examples.S355);
    assertTrue(numbers(member(1), stock).canExceed(new double[CUT], 0, 1, asked(10)));
  }

  @Test
  void bounds_that_are_not_there_are_refused() {
    MemberChecks.Numbers numbers = numbers(member(1), new Stock(Examples.TUBE, Examples.S355));
    assertRefused("from number 1 on, 1 apart; there are 7", numbers, 7, 1, 1);
    assertRefused("from number -1 on, 1 apart; there are 9", numbers, 9, -1, 1);
    assertRefused("from number 0 on, 0 apart; there are 9", numbers, 9, 0, 0);
    assertRefused("from number 8 on, 2147483647 apart; there are 0", numbers, 0, 8, 2147483647);
  }

  private static void assertRefused(
      String words, MemberChecks.Numbers numbers, int count, int at, int stride) {
    String message =
        assertThrows(
                ModelException.class,
                () -> numbers.canExceed(new double[count], at, stride, asked(1)))
            .getMessage();
    assertEquals("7 bounds of forces are asked for " + words + " numbers", message);
  }

  @Test
  void an_open_section_is_always_looked_at() {
    Stock channel = new Stock(Section.foldedChannel(mm(60), mm(40), mm(3), mm(3)), Examples.S355);
    Map<Beam, Double> beams = Map.of(Beam.rigid("front", "a", "b", channel), 0.4);
    MemberChecks.Numbers numbers = MemberChecks.numbers(member(1), beams, channel);
    assertTrue(numbers.canExceed(new double[CUT], 0, 1, asked(1)));
  }

  @Test
  void doubts_name_a_round_wall_of_class_4_and_a_tube_that_could_escape() {
    Stock can = new Stock(Section.roundTube(mm(150), mm(1)), Examples.S355);
    Stock plank = new Stock(Section.rectangularTube(mm(200), mm(20), mm(4)), Examples.S355);
    assertEquals(
        List.of("wall slenderness: a round wall of class 4"), numbers(member(1), can).doubts());
    assertEquals(
        List.of("lateral-torsional buckling: the tube is so long that it could escape sideways"),
        numbers(member(6), plank).doubts());
    assertEquals(List.of(), numbers(member(1), new Stock(Examples.TUBE, Examples.S355)).doubts());
  }
}

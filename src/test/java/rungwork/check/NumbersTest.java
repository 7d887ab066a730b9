package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.rated;
import static rungwork.quantity.Quantities.mm;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.Member.Weld;
import rungwork.check.MemberChecks.Asked;
import rungwork.check.MemberChecks.Numbers;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.section.Section;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.solve.Solver;

/** The bare numbers of a sweep beside the checks that they stand for. */
class NumbersTest {
  private static final RatedMaterial SOFT_WELDS = rated("4130", 517e6, 414e6);
  private static final RatedMaterial ALUMINIUM =
      new RatedMaterial(
          "6061-T6",
          new Elasticity(69e9, 0.33, 2700),
          new RatedMaterial.Strength(240e6, 290e6, 115e6, 0.08),
          S355.source());
  private static final BucklingLengths LENGTHS = new BucklingLengths(0.4, 1, "braced");

  private static Stream<Arguments> stocks() {
    return Stream.of(
            new Stock(TUBE, S355),
            new Stock(TUBE.turned(), S355),
            new Stock(TUBE, SOFT_WELDS),
            new Stock(TUBE, ALUMINIUM),
            new Stock(Section.squareTube(mm(60), mm(3)), S355),
            new Stock(Section.roundTube(mm(60.3), mm(3)), S355),
            new Stock(Section.rectangularTube(mm(120), mm(60), mm(1.5)), S355),
            new Stock(Section.rectangularTube(mm(60), mm(120), mm(1.5)), S355),
            new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), S355),
            new Stock(Section.flatBar(mm(80), mm(10)), S355))
        .map(stock -> Arguments.of(stock.section().name() + " " + stock.material().name(), stock));
  }

  private static Member member(List<Weld> welds) {
    return new Member("rail", List.of("rear", "front"), LENGTHS, welds);
  }

  /** A cantilever of two beams, 0.4 and 0.6 m. */
  private static Response loaded(Stock stock, Wrench middle, Wrench tip) {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("root", new Point(0, 0, 0))
            .node("middle", new Point(0.4, 0, 0))
            .node("tip", new Point(1, 0, 0))
            .beam(Beam.rigid("rear", "root", "middle", stock))
            .beam(Beam.rigid("front", "middle", "tip", stock))
            .support(Support.fixed("root"))
            .build();
    LoadCase loads =
        LoadCase.of("test load", new Load.AtNode("middle", middle), new Load.AtNode("tip", tip));
    return Solver.of(frame).solve(loads);
  }

  private static Wrench wrench(Random random, double scale) {
    double[] w = random.doubles(6, -scale, scale).toArray();
    return new Wrench(20e3 * w[0], 900 * w[1], 900 * w[2], 200 * w[3], 500 * w[4], 400 * w[5]);
  }

  private static Numbers numbers(Member member, Response response, Stock stock) {
    Map<Beam, Double> beams = new LinkedHashMap<>();
    member.beams().stream()
        .map(response.frame()::beam)
        .forEach(beam -> beams.put(beam, response.frame().length(beam)));
    return MemberChecks.numbers(member, beams, stock);
  }

  /** The forces at the cuts of each beam as a sweep hands them over. */
  private static double[][] cuts(Member member, Response response) {
    LoadedMember loaded = LoadedMember.of(member, response, DesignFactor.NONE);
    return member.beams().stream()
        .map(
            beam ->
                loaded.cuts().stream()
                    .filter(cut -> cut.beam().name().equals(beam))
                    .flatMapToDouble(cut -> Arrays.stream(flat(cut)))
                    .toArray())
        .toArray(double[][]::new);
  }

  private static double[] flat(Cut cut) {
    InternalForces f = cut.forces();
    return new double[] {cut.fraction(), f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()};
  }

  private static int[] counts(double[][] cuts) {
    return Arrays.stream(cuts).mapToInt(beam -> beam.length / 7).toArray();
  }

  private static double asked(Numbers numbers, double[][] cuts, DesignFactor factor, double bound) {
    return numbers.utilisation(cuts, counts(cuts), new Asked(factor, bound));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("stocks")
  void a_sweep_finds_the_utilisation_of_the_check_that_governs(String name, Stock stock) {
    List<Weld> welds = List.of(new Weld("gusset", 0.4), new Weld("tab", 0.7));
    for (long seed = 1; seed <= 12; seed++) {
      Random random = new Random(seed);
      Member member = member(seed % 2 == 0 ? welds : List.of());
      DesignFactor factor = seed % 3 == 0 ? DesignFactor.ROAD : DesignFactor.NONE;
      Response response = loaded(stock, wrench(random, 0.5), wrench(random, 1));
      Check governs =
          MemberChecks.of(member, response, factor).stream()
              .filter(CheckSheet::canGovern)
              .max(Comparator.comparingDouble(check -> check.utilisation().orElse(0)))
              .orElseThrow();
      double expected = governs.utilisation().orElseThrow();
      Numbers numbers = numbers(member, response, stock);
      double[][] cuts = cuts(member, response);
      assertEquals(expected, asked(numbers, cuts, factor, 0), 1e-9 * expected, "seed " + seed);
      String what = governs.what().replace(" beside a weld", "");
      assertEquals(what, numbers.what().replace(" beside a weld", ""), "seed " + seed);
      double below = asked(numbers, cuts, factor, 0.999 * expected);
      assertEquals(expected, below, 1e-9 * expected, "of interest, seed " + seed);
      double above = asked(numbers, cuts, factor, 1.001 * expected);
      assertTrue(above <= expected * (1 + 1e-9), "of no interest, seed " + seed);
    }
  }

  @Test
  void a_tube_that_nothing_loads_uses_nothing() {
    Stock stock = new Stock(TUBE, S355);
    Member member = member(List.of());
    Response response = loaded(stock, Wrench.ZERO, Wrench.ZERO);
    assertEquals(
        0,
        asked(numbers(member, response, stock), cuts(member, response), DesignFactor.NONE, 0),
        1e-12);
  }

  /** Both ends, the quarters, and a weld with 25 mm on either side, as far as they lie inside. */
  @Test
  void the_places_of_a_beam_are_its_ends_quarters_and_welds() {
    Member member = member(List.of(new Weld("gusset", 0.41), new Weld("end", 1)));
    double[][] fractions = MemberChecks.fractions(member, 0.4, 0.6);
    assertArrayEquals(new double[] {0, 0.25, 0.5, 0.75, 0.385 / 0.4, 1}, fractions[0], 1e-12);
    assertArrayEquals(
        new double[] {0, 0.01 / 0.6, 0.035 / 0.6, 0.25, 0.5, 0.75, 0.575 / 0.6, 1},
        fractions[1],
        1e-12);
  }

  private static List<String> doubts(Stock stock, double twist) {
    BucklingLengths lengths = new BucklingLengths(1, 1, twist, "held", Member.Sway.IN_MOMENTS);
    Member member = member(List.of()).with(lengths);
    return numbers(member, loaded(stock, Wrench.ZERO, Wrench.ZERO), stock).doubts();
  }

  @Test
  void a_tubes_doubts_are_known_before_any_load() {
    assertEquals(List.of(), doubts(new Stock(TUBE, S355), 1));
    assertEquals(
        List.of("lateral-torsional buckling: the tube is so long that it could escape sideways"),
        doubts(new Stock(TUBE, S355), 30));
    assertEquals(List.of(), doubts(new Stock(Section.squareTube(mm(60), mm(3)), S355), 30));
    assertEquals(
        List.of(
            "columns, walls and lateral-torsional buckling: outside EN 1993-1-1: 6061-T6 is not"
                + " steel"),
        doubts(new Stock(TUBE, ALUMINIUM), 1));
    // d/t = 70 beyond 90·235/355 = 59.6; 59 within it.
    assertEquals(
        List.of("wall slenderness: a round wall of class 4"),
        doubts(new Stock(Section.roundTube(mm(70), mm(1)), S355), 1));
    assertEquals(List.of(), doubts(new Stock(Section.roundTube(mm(59), mm(1)), S355), 1));
  }

  @Test
  void doubts_that_a_load_raises_are_kept_until_they_are_forgotten() {
    Stock channel = new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), S355);
    Member member = member(List.of());
    Response twisted = loaded(channel, Wrench.ZERO, new Wrench(0, 0, 0, 20, 0, 0));
    Numbers numbers = numbers(member, twisted, channel);
    assertEquals(List.of(), numbers.doubts());
    asked(numbers, cuts(member, twisted), DesignFactor.NONE, 0);
    String twist = OpenTorsion.WHAT + ": it carries twist, and nothing says how far its ends hold";
    assertTrue(
        numbers.doubts().stream().anyMatch(doubt -> doubt.startsWith(twist)),
        numbers.doubts().toString());
    numbers.forget();
    assertEquals(List.of(), numbers.doubts());
  }
}

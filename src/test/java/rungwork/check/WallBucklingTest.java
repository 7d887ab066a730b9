package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;
import static rungwork.check.Examples.rated;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.Material;
import rungwork.material.RatedMaterial;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.section.Wall.Edge;

/** Classes and effective widths of walls by the stresses at their edges. */
class WallBucklingTest {
  private static final double EPSILON = Math.sqrt(235.0 / 355);

  /** kσ is 23.88 on one side of ψ = −1 and 23.92 on the other: 0.03 mm of this web [m]. */
  private static final double NEAR = 5e-5;

  private static LoadedMember loaded(Section section, Wrench wrench) {
    return LoadedMember.of(BAR, cantilever(new Stock(section, S355), wrench), NONE);
  }

  private static Wall wall(Section section, String name) {
    return section.walls().stream().filter(w -> w.name().equals(name)).findFirst().orElseThrow();
  }

  /** From α = ½ down 36/α and 41.5/α, above it 396/(13α − 1) and 456/(13α − 1), of ε. */
  @Test
  void the_class_limits_of_a_web_depend_on_how_much_of_it_is_compressed() {
    Wall web = wall(TUBE, "left wall");
    BendingClass little = new BendingClass(web, 0.4, -1.5);
    assertEquals(90 * 0.8, little.limit(1, 0.8), 1e-9);
    assertEquals(103.75 * 0.8, little.limit(2, 0.8), 1e-9);
    // 62·(1 + 1.5)·√1.5
    assertEquals(62 * 2.5 * Math.sqrt(1.5) * 0.8, little.limit(3, 0.8), 1e-9);
    BendingClass half = new BendingClass(web, 0.5, -1);
    assertEquals(72, half.limit(1, 1), 1e-9);
    assertEquals(83, half.limit(2, 1), 1e-9);
    assertEquals(124, half.limit(3, 1), 1e-9);
    BendingClass most = new BendingClass(web, 0.8, -0.25);
    assertEquals(396 / 9.4, most.limit(1, 1), 1e-9);
    assertEquals(456 / 9.4, most.limit(2, 1), 1e-9);
  }

  @Test
  void round_walls_and_flanges_have_their_own_limits() {
    Wall round = Section.roundTube(mm(60.3), mm(3)).walls().get(0);
    BendingClass bent = new BendingClass(round, 1, 1);
    assertEquals(50 * 0.64, bent.limit(1, 0.8), 1e-9);
    assertEquals(70 * 0.64, bent.limit(2, 0.8), 1e-9);
    assertEquals(90 * 0.64, bent.limit(3, 0.8), 1e-9);
    Wall flange =
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)).walls().stream()
            .filter(w -> w.edge() == Edge.OUTSTAND)
            .findFirst()
            .orElseThrow();
    assertEquals(9 * 0.8 / 0.5, new BendingClass(flange, 0.5, 0).limit(1, 0.8), 1e-9);
    assertEquals(10 * 0.8 / 0.5, new BendingClass(flange, 0.5, 0).limit(2, 0.8), 1e-9);
  }

  /** A round tube's unit is ε², not ε: 40 is over 50·235/355 = 33.1, below 70·235/355 = 46.3. */
  @Test
  void a_round_tube_of_stronger_steel_is_classed_by_the_square_of_epsilon() {
    assertEquals(2, WallLimits.classOf(Section.roundTube(mm(40), mm(1)).walls().get(0), 355e6));
    assertEquals(124, WallLimits.third(Edge.INTERNAL, 1, -1).result(), 1e-9);
  }

  @Test
  void the_worst_wall_gives_the_section_its_class() {
    // 80 wide and 40 high: c/t = 71/3 on top, 31/3 at the sides.
    assertEquals(
        "class 1 in uniform compression: top wall, c/t = 23.7; class 3 ends at 34.2 (EN"
            + " 1993-1-1:2005, table 5.2, ε = 0.814)",
        WallLimits.classInCompression(
            Section.rectangularTube(mm(40), mm(80), mm(3)), Material.rated("S355J2H")));
    // A flange of 34/3 to 14·ε is nearer to its limit than a web of 68/3 to 42·ε.
    assertEquals(
        "class 3 in uniform compression: top left flange, c/t = 11.3; class 3 ends at 11.4 (EN"
            + " 1993-1-1:2005, table 5.2, ε = 0.814)",
        WallLimits.classInCompression(
            Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), Material.rated("S355J2H")));
    // c = 120 − 3·1.5 on top, 77 > 42ε.
    String four =
        WallLimits.classInBending(
            Section.rectangularTube(mm(60), mm(120), mm(1.5)), Material.rated("S355J2H"));
    assertEquals(
        "class 4 bent about y: top wall, c/t = 77.0; classes end at 26.8, 30.9 and 34.2 (EN"
            + " 1993-1-1:2005, table 5.2, α = 1.00)",
        four);
    assertEquals(
        "class not checked: outside EN 1993-1-1: 6061-T6 is not steel",
        WallLimits.classInBending(TUBE, Material.rated("6061-T6")));
    // 0.07·210000/235 = 62.6 and 0.31·210000/235 = 277.
    assertEquals(
        "compact bent about y: wall, D/t = 20.1; compact to 62.6, noncompact to 277 (AISC 360-16,"
            + " table B4.1b)",
        WallLimits.americanInBending(
            Section.roundTube(mm(60.3), mm(3)), Material.rated("S235JRH")));
  }

  /** M·r/I at the wall against the pull's N/A: compressed on one side only where it is larger. */
  @Test
  void a_bent_round_tube_is_compressed_where_bending_outweighs_the_pull() {
    Section tube = Section.roundTube(mm(60.3), mm(3));
    Properties p = tube.properties();
    double bending = 500 * 0.0603 / 2 / p.iy();
    for (double part : new double[] {0.98, 1.02}) {
      Wrench wrench = new Wrench(part * bending * p.area(), 0, 0, 0, 300, 400);
      boolean asked =
          MemberChecks.of(BAR, cantilever(new Stock(tube, S355), wrench), NONE).stream()
              .anyMatch(check -> check.what().equals(WallSlenderness.WHAT));
      assertEquals(part < 1, asked, "pull of " + part);
    }
  }

  /**
   * A web of 200 × 1 mm bent about its middle, flat width 200 − 3 = 197: kσ = 5.98·4 = 23.92, λ̄p =
   * 197/(28.4·ε·√kσ) = 1.7432, ρ = (λ̄p − 0.055·2)/λ̄p² = 0.5375. Of the compressed half ρ/2 is
   * left, 0.4 of that at the flange; what is gone follows it.
   */
  @ParameterizedTest
  @ValueSource(doubles = {200, -200})
  void a_slender_web_loses_a_strip_on_its_compressed_side(double moment) {
    Section section = Section.rectangularTube(mm(200), mm(60), mm(1));
    LoadedMember member = loaded(section, Wrench.moment(0, moment, 0));
    double bar = 197 / (28.4 * EPSILON * Math.sqrt(23.92));
    double rho = (bar - 0.11) / (bar * bar);
    double near = 0.0985 - 0.197 * 0.4 * rho / 2;
    double far = near - 0.197 * (0.5 - rho / 2);
    for (String name : List.of("left wall", "right wall")) {
      CompressedWall web = CompressedWall.of(wall(section, name), member.cuts());
      assertEquals(-1, web.psi(), 1e-9);
      Wall gone = new EffectiveWidth(web, 355e6).gone();
      // The upper fibres of a cut under a positive My are stretched.
      double side = -Math.signum(moment);
      assertEquals(near, Math.max(side * gone.from().z(), side * gone.to().z()), NEAR);
      assertEquals(far, Math.min(side * gone.from().z(), side * gone.to().z()), NEAR);
    }
  }

  /**
   * The flanges of a channel bent about z, toe or web compressed most: table 4.2 with ψ from the
   * distances to the centroid.
   */
  @ParameterizedTest
  @ValueSource(doubles = {100, -100})
  void a_flange_loses_what_is_nearer_to_its_toe(double moment) {
    Section section = Section.foldedChannel(mm(80), mm(60), mm(1), mm(1));
    LoadedMember member = loaded(section, Wrench.moment(0, 0, moment));
    for (Wall flange : section.walls()) {
      if (flange.edge() == Edge.OUTSTAND) {
        CompressedWall wall = CompressedWall.of(flange, member.cuts());
        double toe =
            Math.abs(flange.from().y()) > Math.abs(flange.to().y())
                ? flange.from().y()
                : flange.to().y();
        double held = flange.from().y() + flange.to().y() - toe;
        // −Mz·y/Iz: the side with the sign of Mz is compressed.
        boolean toeIs = Math.signum(toe) == Math.signum(moment);
        double psi = toeIs ? held / toe : toe / held;
        double k = toeIs ? 0.57 - 0.21 * psi + 0.07 * psi * psi : freeInTension(psi);
        double bar = flange.width() / 1e-3 / (28.4 * EPSILON * Math.sqrt(k));
        double rho = Math.min(1, (bar - 0.188) / (bar * bar));
        assertEquals(psi, wall.psi(), 1e-9);
        assertEquals(rho, new EffectiveWidth(wall, 355e6).working().get(2).result(), 1e-9);
        double compressed = psi < 0 ? 1 / (1 - psi) : 1;
        Wall gone = new EffectiveWidth(wall, 355e6).gone();
        assertEquals((1 - rho) * compressed * flange.width(), gone.width(), 1e-9);
        double toward = Math.signum(toe - held);
        double end = toeIs ? toe : held + toward * compressed * flange.width();
        double reached =
            toward > 0
                ? Math.max(gone.from().y(), gone.to().y())
                : Math.min(gone.from().y(), gone.to().y());
        assertEquals(end, reached, 1e-9);
      }
    }
  }

  private static double freeInTension(double psi) {
    double ratio = Math.max(-1, psi);
    return 1.7 - 5 * ratio + 17.1 * ratio * ratio;
  }

  /** Below a strain of a millionth, 0.21 MPa in steel, nothing counts as compressed. */
  @Test
  void a_compression_that_is_rounding_asks_for_no_column() {
    Stock stock = new Stock(TUBE, S355);
    double limit = 0.21e6 * TUBE.properties().area();
    assertFalse(compressed(stock, 0.98 * limit));
    assertTrue(compressed(stock, 1.02 * limit));
  }

  private static boolean compressed(Stock stock, double push) {
    return MemberChecks.of(BAR, cantilever(stock, Wrench.force(-push, 0, 0)), NONE).stream()
        .anyMatch(check -> check.what().equals(ColumnBuckling.WHAT));
  }

  @Test
  void the_american_limit_is_that_for_bending_where_nothing_else_acts() {
    double rounding = 0.98 * 0.21e6 * TUBE.properties().area();
    assertTrue(american(rounding).contains("table B4.1b"));
    assertTrue(american(10 * rounding).contains("table B4.1a"));
  }

  private static String american(double push) {
    Wrench wrench = new Wrench(-push, 0, 0, 0, 300, 0);
    List<Check> checks = MemberChecks.of(BAR, cantilever(new Stock(TUBE, S355), wrench), NONE);
    return only(WallSlenderness.WHAT, checks).working().stream()
        .filter(step -> step.formula().result().letter().equals("(c/t)A"))
        .findFirst()
        .orElseThrow()
        .formula()
        .source();
  }

  private static RatedMaterial metal(double modulus, double yield) {
    RatedMaterial steel = rated("metal", yield, yield);
    return new RatedMaterial(
        "metal", new Elasticity(modulus, 0.3, 7850), steel.strength(), steel.source());
  }

  @Test
  void the_rules_cover_what_is_as_stiff_as_steel_and_no_stronger_than_s700() {
    assertEquals(Optional.empty(), SteelRange.of(metal(190e9, 700e6)));
    assertEquals(Optional.empty(), SteelRange.of(metal(220e9, 700e6)));
    assertEquals(
        Optional.of("outside EN 1993-1-1: metal is not steel"), SteelRange.of(metal(189e9, 355e6)));
    assertEquals(
        Optional.of("outside EN 1993-1-1: metal is not steel"), SteelRange.of(metal(221e9, 355e6)));
    assertEquals(
        Optional.of(
            "outside EN 1993-1-1 and EN 1993-1-12: metal is stronger than grade S700, the last"
                + " that they cover"),
        SteelRange.of(metal(210e9, 701e6)));
  }

  private static List<String> letters(Section section) {
    LoadedMember member = loaded(section, new Wrench(-9e3, 0, 0, 0, 200, 0));
    CompressedWall wall = CompressedWall.of(section.walls().get(0), member.cuts());
    return wall.working(355e6).stream().map(step -> step.formula().result().letter()).toList();
  }

  @Test
  void a_walls_working_shows_the_stress_ratio_of_flat_ones_and_the_factor_of_flanges() {
    assertEquals(List.of("c/t", "ε", "ψ", "(c/t)₃"), letters(TUBE));
    assertEquals(List.of("c/t", "ε", "(c/t)₃"), letters(Section.roundTube(mm(60.3), mm(3))));
    assertEquals(
        List.of("c/t", "ε", "ψ", "kσ", "(c/t)₃"),
        letters(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3))));
  }

  /** A flange of 34/3 against 14·ε = 11.39 is nearer to its limit than a web of 68/3 to 42·ε. */
  @Test
  void the_wall_that_is_nearest_to_its_own_limit_is_shown() {
    Stock channel = new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), S355);
    Check check =
        only(
            WallSlenderness.WHAT,
            MemberChecks.of(BAR, cantilever(channel, Wrench.force(-5e3, 0, 0)), NONE));
    assertTrue(check.where().contains("flange"), check.where());
    assertEquals(34.0 / 3, check.verdict().numbers().orElseThrow().demand(), 1e-9);
    assertEquals(14 * EPSILON, check.verdict().numbers().orElseThrow().capacity(), 1e-9);
  }

  /** EN 1993-1-3, table 5.1: flat widths up to 500 thicknesses. */
  @Test
  void effective_widths_are_for_walls_up_to_500_times_as_wide_as_thick() {
    Section within = Section.rectangularTube(mm(502), mm(60), mm(1));
    Section beyond = Section.rectangularTube(mm(504), mm(60), mm(1));
    assertTrue(EffectiveWidth.covers(wall(within, "left wall")), "499");
    assertFalse(EffectiveWidth.covers(wall(beyond, "left wall")), "501");
  }
}

package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.section.Section;
import rungwork.section.Wall;
import rungwork.solve.InternalForces;

/** Classes of walls in uniform compression, c = b − 3t for cold-formed tubes. */
class WallClassTest {
  @ParameterizedTest
  @CsvSource({
    "36, 1, 1", // c/t 33
    "36.1, 1, 2",
    "41, 1, 2", // 38
    "41.1, 1, 3",
    "45, 1, 3", // 42
    "45.1, 1, 4"
  })
  void a_tube_s_wall_changes_class_at_33_38_and_42(double side, double wall, int expected) {
    Section tube = Section.rectangularTube(mm(side), mm(side), mm(wall), mm(1.5 * wall));
    assertEquals(expected, WallLimits.classOf(tube.walls().get(0), 235e6));
  }

  @ParameterizedTest
  @CsvSource({"49.9, 1", "50.1, 2", "70.1, 3", "90.1, 4"})
  void a_round_tube_changes_class_at_50_70_and_90(double diameter, int expected) {
    Section tube = Section.roundTube(mm(diameter), mm(1));
    assertEquals(expected, WallLimits.classOf(tube.walls().get(0), 235e6));
  }

  @ParameterizedTest
  @CsvSource({"8.9, 1", "9.9, 2", "13.9, 3", "14.1, 4"})
  void a_flange_changes_class_at_9_10_and_14(double ratio, int expected) {
    Section channel = Section.foldedChannel(mm(80), mm(2 * (ratio + 2)), mm(2), mm(2));
    assertEquals(expected, WallLimits.classOf(channel.walls().get(0), 235e6));
  }

  @Test
  void stronger_steel_has_narrower_limits() {
    Section tube = Section.squareTube(mm(100), mm(3));
    assertEquals(1, WallLimits.classOf(tube.walls().get(0), 235e6));
    assertEquals(2, WallLimits.classOf(tube.walls().get(0), 355e6));
    assertEquals(4, WallLimits.classOf(tube.walls().get(0), 460e6));
  }

  @Test
  void a_section_has_the_class_of_its_worst_wall_with_the_clause() {
    Section tube = Section.rectangularTube(mm(80), mm(40), mm(3));
    assertEquals(
        "class 1 in uniform compression: left wall, c/t = 23.7; class 3 ends at 34.2 (EN"
            + " 1993-1-1:2005, table 5.2, ε = 0.814)",
        WallLimits.classInCompression(tube, Material.rated("S355J2H")));
    String round =
        WallLimits.classInCompression(
            Section.roundTube(mm(60.3), mm(3)), Material.rated("S235JRH"));
    assertTrue(round.contains("d/t = 20.1; class 3 ends at 90.0"), round);
  }

  @Test
  void what_the_standard_does_not_cover_is_not_checked() {
    assertEquals(
        "class not checked: outside EN 1993-1-1: 6061-T6 is not steel",
        WallLimits.classInCompression(
            Section.squareTube(mm(50), mm(3)), Material.rated("6061-T6")));
    assertEquals(
        "class not checked: a solid bar has no thin walls, or its walls are not known",
        WallLimits.classInCompression(Section.flatBar(mm(50), mm(8)), Material.rated("S355JR")));
  }

  /** 72, 83 and 124 ε for a web bent about its middle, 33, 38 and 42 ε for a flange. */
  @Test
  void bending_about_the_middle_asks_the_printed_limits_of_web_and_flange() {
    Section tube = Section.rectangularTube(mm(80), mm(40), mm(3));
    for (Wall wall : tube.walls()) {
      BendingClass bent = BendingClass.of(wall);
      boolean web = wall.from().y() == wall.to().y();
      boolean top = !web && wall.from().z() > 0;
      if (web || top) {
        assertEquals(web ? 72 : 33, bent.limit(1, 1), 0.1, wall.name());
        assertEquals(web ? 83 : 38, bent.limit(2, 1), 0.1, wall.name());
        assertEquals(web ? 124 : 42, bent.limit(3, 1), 0.5, wall.name());
      } else {
        assertEquals(1, bent.number(1), wall.name() + " is stretched");
      }
    }
  }

  @Test
  void an_outstand_in_bending_is_held_to_uniform_compression() {
    Section channel = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));
    Wall flange =
        channel.walls().stream()
            .filter(wall -> wall.edge() == Wall.Edge.OUTSTAND && wall.from().z() > 0)
            .findFirst()
            .orElseThrow();
    assertEquals(9, BendingClass.of(flange).limit(1, 1), 1e-12);
    assertEquals(10, BendingClass.of(flange).limit(2, 1), 1e-12);
    assertEquals(14, BendingClass.of(flange).limit(3, 1), 1e-12);
  }

  @Test
  void the_class_in_bending_is_that_of_the_worst_wall() {
    assertEquals(
        "class 1 bent about y: top wall, c/t = 10.3; classes end at 26.8, 30.9 and 34.2 (EN"
            + " 1993-1-1:2005, table 5.2, α = 1.00)",
        WallLimits.classInBending(
            Section.rectangularTube(mm(80), mm(40), mm(3)), Material.rated("S355J2H")));
    assertEquals(
        "class in bending not checked: its upper and lower halves are not alike",
        WallLimits.classInBending(
            Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)).turned(),
            Material.rated("S355MC")));
    String thin =
        WallLimits.classInBending(
            Section.rectangularTube(mm(120), mm(40), mm(1.5)), Material.rated("S355J2H"));
    assertTrue(thin.startsWith("class 3 bent about y: "), thin);
  }

  @Test
  void the_american_word_for_a_bent_section_stands_with_its_limits() {
    assertEquals(
        "compact bent about y: top wall, b/t = 10.3; compact to 27.2, noncompact to 34.1 (AISC"
            + " 360-16, table B4.1b)",
        WallLimits.americanInBending(
            Section.rectangularTube(mm(80), mm(40), mm(3)), Material.rated("S355J2H")));
    assertTrue(
        WallLimits.americanInBending(
                Section.rectangularTube(mm(40), mm(100), mm(3)), Material.rated("S355J2H"))
            .startsWith("noncompact bent about y: "));
    assertTrue(
        WallLimits.americanInBending(
                Section.rectangularTube(mm(40), mm(120), mm(2)), Material.rated("S355J2H"))
            .startsWith("slender bent about y: "));
    assertTrue(
        WallLimits.americanInBending(Section.roundTube(mm(60.3), mm(3)), Material.rated("S235JRH"))
            .startsWith("compact bent about y: wall, D/t = 20.1; "));
    assertEquals(
        "limits of AISC 360 not checked: its upper and lower halves are not alike",
        WallLimits.americanInBending(
            Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)).turned(),
            Material.rated("S355MC")));
  }

  /**
   * A long wall hinged along one edge turns about it, w = y: its work against ∫σw′² gives kσ =
   * 0.425/(3∫σy²dy) with σ = 1 at the more compressed edge.
   */
  @ParameterizedTest
  @CsvSource({"1", "0.75", "0.5", "0.25", "0"})
  void an_outstand_s_buckling_factor_is_that_of_its_energy(double psi) {
    double free = 0.425 / (3 * (psi / 3 + (1 - psi) / 4));
    double held = 0.425 / (3 * (1.0 / 3 - (1 - psi) / 4));
    assertEquals(1, PlateFactor.outstand(psi, Peak.FREE_EDGE).result() / free, 0.015);
    assertEquals(1, PlateFactor.outstand(psi, Peak.HELD_EDGE).result() / held, 0.02);
  }

  @Test
  void an_outstand_counts_by_its_own_stresses() {
    Section channel = Section.foldedChannel(mm(80), mm(60), mm(2), mm(2));
    Wall flange =
        channel.walls().stream()
            .filter(wall -> wall.edge() == Wall.Edge.OUTSTAND && wall.from().z() > 0)
            .findFirst()
            .orElseThrow();
    CompressedWall tip = bent(channel, flange, 1);
    CompressedWall root = bent(channel, flange, -1);
    assertEquals(Peak.FREE_EDGE, tip.peak());
    assertEquals(Peak.HELD_EDGE, root.peak());
    assertTrue(tip.isClassFour(355e6), "its free edge compressed");
    assertTrue(!root.isClassFour(355e6), "its free edge stretched");
    EffectiveWidth effective = new EffectiveWidth(tip, 355e6);
    double rho = effective.working().get(2).result();
    double compressed = tip.psi() < 0 ? 1 / (1 - tip.psi()) : 1;
    assertEquals((1 - rho) * compressed * flange.width(), effective.gone().width(), 1e-9);
    double reach = Math.max(Math.abs(flange.from().y()), Math.abs(flange.to().y()));
    Wall gone = effective.gone();
    double outer = Math.max(Math.abs(gone.from().y()), Math.abs(gone.to().y()));
    assertEquals(reach, outer, 1e-9, "its free edge is lost");
  }

  /** Bent about z only, so that the flange's tip is compressed (1) or stretched (−1). */
  private static CompressedWall bent(Section channel, Wall flange, double sign) {
    double outwards = Math.signum(flange.from().y() + flange.to().y());
    double moment = 100 * sign * outwards;
    InternalForces forces = new InternalForces(0, 0, 0, 0, 0, moment);
    Beam beam = Beam.rigid("b", "A", "B", new Stock(channel, Material.rated("S355MC")));
    return CompressedWall.of(flange, List.of(new Cut(beam, channel, 0, 0, forces)));
  }
}

package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.frame.Load;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;

class MomentShapeTest {
  private static final Stock STOCK = new Stock(TUBE, S355);

  private static double factor(double length, Load... loads) {
    LoadedMember member = LoadedMember.of(BAR, cantilever(STOCK, loads), NONE);
    return MomentShape.of(member, BendingAxis.Y, length).factor();
  }

  private static Load tip(double force, double moment) {
    return new Load.AtNode("tip", new Wrench(0, 0, force, 0, moment, 0));
  }

  /** The table's own values, and between them along straight lines; beyond ±1 its ends. */
  @ParameterizedTest
  @CsvSource({
    "-2, 2.55", "-1, 2.55", "-0.9, 2.558", "-0.75, 2.57", "-0.5, 2.33", "-0.25, 2.05", "0, 1.77",
    "0.1, 1.67", "0.25, 1.52", "0.5, 1.31", "0.75, 1.14", "0.9, 1.056", "1, 1", "3, 1"
  })
  void between_end_moments_it_is_the_tables_factor(double ratio, double expected) {
    assertEquals(expected, MomentShape.between(ratio).factor(), 1e-12);
  }

  /**
   * A cantilever of 1 m with 100 N·m at its tip and a force F there: M − F·1 m at its root. F = 50:
   * ψ = 0.5; 150: −0.5; −150: 100/250 = 0.4, between 1.52 and 1.31; none: 1; 300: −100/200.
   */
  @ParameterizedTest
  @CsvSource({
    "50, 1.31",
    "150, 2.33",
    "-150, 1.394",
    "0, 1",
    "300, 2.33",
    "200, 2.55",
    "100, 1.77"
  })
  void a_straight_diagram_is_told_by_its_end_moments(double force, double expected) {
    assertEquals(expected, factor(1, tip(force, 100)), 1e-6);
  }

  @Test
  void a_part_of_another_length_a_curved_diagram_and_no_moment_count_as_uniform() {
    assertEquals(1, factor(0.9, tip(50, 100)));
    assertEquals(1, factor(1.1, tip(50, 100)));
    assertEquals(1, factor(1, tip(50, 100), new Load.AlongBeam("bar", 0, 0, -200)));
    assertEquals(1, factor(1, tip(0, 0)));
  }
}

package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.S355;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.check.Member.BucklingLengths;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.section.Properties;

class InitialBowTest {
  private static final double LENGTH = 2;
  private static final Properties TUBE = Examples.TUBE.properties();

  /** A tube 80×40×3 of 2 m in two unequal pieces, hinged at both ends. */
  private static Frame strut() {
    return Frame.in(Plane.PLAN)
        .node("a", new Point(0, 0, 0))
        .node("b", new Point(0.8, 0, 0))
        .node("c", new Point(LENGTH, 0, 0))
        .beam(Beam.rigid("first", "a", "b", new Stock(Examples.TUBE, S355)))
        .beam(Beam.rigid("second", "b", "c", new Stock(Examples.TUBE, S355)))
        .support(Support.holding("a", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX))
        .support(Support.holding("c", Freedom.UY, Freedom.UZ))
        .build();
  }

  private static LoadCase push(double force) {
    return LoadCase.of("push", new Load.AtNode("c", new Wrench(-force, 0, 0, 0, 0, 0)));
  }

  private static Member member(BucklingLengths lengths) {
    return new Member("strut", List.of("first", "second"), lengths, List.of());
  }

  private static List<Check> bowed(double force) {
    BucklingLengths held = new BucklingLengths(LENGTH, LENGTH, "full length");
    return MemberChecks.bowed(member(held), strut(), push(force), DesignFactor.NONE);
  }

  private static double use(double force) {
    return Examples.only("combined stress", bowed(force)).utilisation().orElseThrow();
  }

  /**
   * An arc of rise e₀ under N: M = 8·EI·e₀/L²·(sec(kL/2) − 1), k² = N/EI; its middle is looked at.
   */
  @ParameterizedTest
  @CsvSource({"5000", "20000", "40000"})
  void a_bowed_strut_carries_the_moment_of_the_closed_form(double force) {
    double rigidity = 210e9 * TUBE.iz();
    double e0 = LENGTH / 200;
    double half = Math.sqrt(force / rigidity) * LENGTH / 2;
    double moment = 8 * rigidity * e0 / (LENGTH * LENGTH) * (1 / Math.cos(half) - 1);
    double stress = force / TUBE.area() + moment / TUBE.welz();
    assertEquals(stress / 355e6, use(force), 2e-3 * stress / 355e6);
  }

  /** Second route: the column curve. Where the bowed strut yields, the curve's strength is near. */
  @Test
  void the_bow_and_the_column_curve_give_nearly_one_strength() {
    double low = 0;
    double high = Math.PI * Math.PI * 210e9 * TUBE.iz() / (LENGTH * LENGTH) * 0.999;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (use(middle) < 1) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Column column = new Column(210e9, TUBE.area(), TUBE.iz(), LENGTH);
    double chi = column.reduction(ColumnCurve.C, 355e6).get(3).result();
    double strength = chi * TUBE.area() * 355e6;
    assertEquals(strength, low, 0.08 * strength);
  }

  @Test
  void no_column_is_checked_beside_a_bow_and_the_case_says_which_way() {
    List<Check> checks = bowed(20000);
    assertTrue(checks.stream().noneMatch(check -> check.what().equals(ColumnBuckling.WHAT)));
    String name = Examples.only("combined stress", checks).loadCase();
    assertTrue(name.startsWith("push, strut bowed by 10.0 mm along "), name);
    assertTrue(name.endsWith("y"), name);
  }

  @Test
  void a_bow_and_lengths_with_sway_are_refused_together() {
    BucklingLengths swaying =
        new BucklingLengths(4, 4, 2, "from the frame's critical load", Member.Sway.IN_LENGTHS);
    assertEquals(
        "part strut is to be bowed in second order, but its effective lengths have the frame's sway"
            + " inside (from the frame's critical load); never both: give lengths between held ends"
            + " (K at most 1)",
        assertThrows(
                ModelException.class,
                () -> MemberChecks.bowed(member(swaying), strut(), push(1), DesignFactor.NONE))
            .getMessage());
  }

  /** Curve c: a two-hundredth of the length, 10 mm of 2 m, either way along both axes. */
  @Test
  void each_bow_is_a_case_of_its_own_that_says_which_way_it_goes() {
    BucklingLengths held = new BucklingLengths(LENGTH, LENGTH, "full length");
    InitialBow bow = new InitialBow(member(held), ColumnCurve.C);
    assertEquals(
        List.of(
            "push, strut bowed by 10.0 mm along +y",
            "push, strut bowed by 10.0 mm along −y",
            "push, strut bowed by 10.0 mm along +z",
            "push, strut bowed by 10.0 mm along −z"),
        bow.cases(push(1000), strut()).stream().map(LoadCase::name).toList());
  }
}

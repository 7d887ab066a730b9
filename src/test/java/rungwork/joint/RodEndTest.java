package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.joint.Parts.demand;
import static rungwork.joint.Parts.named;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.check.LimitState;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

class RodEndTest {
  private static final double DEGREE = Math.PI / 180;
  private static final Point BALL = new Point(0, 0, 0.03);
  private static final RodEnd.Shank SHANK = RodEnd.Shank.of(mm(10), mm(40), MPa(500));

  private static RodEnd rodEnd(RodEnd.Shank shank) {
    RodEnd.Rating rating = new RodEnd.Rating(30e3, 4e3, 15 * DEGREE, "a data sheet");
    return new RodEnd("lower link", rating, shank, 12 * DEGREE);
  }

  @Test
  void a_load_on_the_shanks_line_bends_nothing() {
    List<Check> checks = rodEnd(SHANK).checks(Parts.load(Wrench.force(0, 0, 10e3), BALL));
    assertEquals(10e3 / (Math.PI * 25e-6), demand(checks, "bending of the shank"), 1);
  }

  @Test
  void a_load_off_the_line_bends_the_shank_and_soon_governs() {
    List<Check> checks = rodEnd(SHANK).checks(Parts.load(Wrench.force(1000, 0, 10e3), BALL));
    double bending = 32 * 1000 * 0.04 / (Math.PI * 1e-6);
    assertEquals(10e3 / (Math.PI * 25e-6) + bending, demand(checks, "bending of the shank"), 1);
  }

  @Test
  void the_shank_follows_its_direction() {
    RodEnd.Shank turned = new RodEnd.Shank(0.010, 0.040, 500e6, 30 * DEGREE);
    Wrench wrench = Wrench.force(10e3 * Math.sin(30 * DEGREE), 0, 10e3 * Math.cos(30 * DEGREE));
    List<Check> checks = rodEnd(turned).checks(Parts.load(wrench, BALL));
    assertEquals(10e3 / (Math.PI * 25e-6), demand(checks, "bending of the shank"), 1);
  }

  @Test
  void typed_makers_give_the_same_rod_end() {
    RodEnd.Rating rating = RodEnd.Rating.of(kN(30), kN(4), deg(15), "a data sheet");
    RodEnd typed = new RodEnd("lower link", rating, SHANK.turned(deg(30)), 0);
    RodEnd plain = rodEnd(new RodEnd.Shank(0.010, 0.040, 500e6, 30 * DEGREE));
    FaceLoad load = Parts.load(Wrench.force(900, -200, 4e3), BALL);
    List<Check> one = typed.withMisalignment(deg(12)).checks(load);
    List<Check> two = plain.checks(load);
    for (int i = 0; i < one.size(); i++) {
      double expected = two.get(i).utilisation().orElseThrow();
      assertEquals(expected, one.get(i).utilisation().orElseThrow(), 1e-12 * expected);
    }
  }

  @Test
  void ratings_are_asked_apart_and_together_on_their_own_basis() {
    FaceLoad load = FaceLoad.at("braking", BALL, Factors.ROAD).force(kN(3), kN(-0.8), kN(4));
    List<Check> checks = rodEnd(SHANK).checks(load);
    Check radial = named(checks, "radial load");
    assertEquals(LimitState.RATING, radial.basis().limitState());
    assertEquals("the maker's rating, given by the user: a data sheet", radial.source());
    assertEquals(1.5 * 5 / 30, radial.utilisation().orElseThrow(), 1e-12);
    assertEquals(
        1.5 * (5.0 / 30 + 0.8 / 4),
        named(checks, "radial and axial load").utilisation().orElseThrow(),
        1e-12);
    assertEquals(
        0.8, named(checks, "misalignment over the travel").utilisation().orElseThrow(), 1e-12);
  }

  @Test
  void a_ball_holds_no_moment_about_its_pin() {
    Refused.with(
        "rod end lower link is asked to hold 12.00 N·m about its pin under braking; a ball turns"
            + " freely",
        () -> rodEnd(SHANK).checks(Parts.load(Wrench.moment(0, 12, 0), BALL)));
  }

  @Test
  void a_rating_of_nothing_is_refused() {
    Refused.with(
        "axial rating 0 kN is not above zero", () -> new RodEnd.Rating(30e3, 0, 0.2, "a sheet"));
    Refused.with(
        "a source of a rod end's rating has no name; give it one",
        () -> new RodEnd.Rating(30e3, 1e3, 0.2, " "));
    Refused.with(
        "misalignment of lower link -2.000 deg is below zero",
        () -> new RodEnd("lower link", rodEnd(SHANK).rating(), SHANK, -2 * DEGREE));
  }
}

package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
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

/**
 * Columns whose shear centre lies off the centroid: out of the plane they bend and twist together.
 * Closed form (Timoshenko and Gere, Theory of Elastic Stability, 1961, 5.4, from memory), warping
 * stiffness left out: (P − Pz)(P − PT)·r² = P²·yS², Pz Euler's load, PT = GJ/r², r² = (Iy + Iz)/A +
 * yS².
 */
class EccentricColumnTest {
  private static final double AREA = 100;
  private static final double OFFSET = 0.1;
  private static final double RADIUS_SQUARED = 2 / AREA + OFFSET * OFFSET;
  private static final double SHEAR = 0.4;

  private static Stock channel(double torsion, double offset) {
    return new Stocks(1, SHEAR).eccentric(new Stocks.Shape(AREA, 1, 1, torsion), offset);
  }

  private static Frame.Builder column(Stock stock) {
    return Frame.in(Plane.FRONT)
        .node("foot", new Point(0, 0, 0))
        .node("top", new Point(0, 0, 1))
        .beam(Beam.rigid("rail", "foot", "top", stock));
  }

  private static Frame held(String ends, Stock stock) {
    Frame.Builder frame = column(stock);
    switch (ends) {
      case "pinned" ->
          frame
              .support(
                  Support.holding(
                      "foot", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RZ))
              .support(Support.holding("top", Freedom.UX, Freedom.UY, Freedom.RX, Freedom.RZ));
      case "fixed" ->
          frame
              .support(Support.fixed("foot"))
              .support(
                  Support.holding(
                      "top", Freedom.UX, Freedom.UY, Freedom.RX, Freedom.RY, Freedom.RZ));
      default ->
          frame
              .support(Support.fixed("foot"))
              .support(Support.holding("top", Freedom.UY, Freedom.RX));
    }
    return frame.build();
  }

  private static CriticalLoad pressed(Frame frame) {
    return Buckling.of(
            Solver.of(frame)
                .solve(LoadCase.of("pressed", new Load.AtNode("top", Wrench.force(0, 0, -1)))))
        .outOfPlane()
        .orElseThrow();
  }

  /** The smaller root of the closed form. */
  private static double closedForm(double euler, double torsional) {
    double a = RADIUS_SQUARED - OFFSET * OFFSET;
    double b = RADIUS_SQUARED * (euler + torsional);
    double c = RADIUS_SQUARED * euler * torsional;
    return (b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);
  }

  @ParameterizedTest
  @CsvSource({
    "pinned, 1, 0.1", "pinned, 1, 1", "pinned, 1, 10", "pinned, 1, 1000",
    "free, 0.25, 0.1", "free, 0.25, 1", "fixed, 4, 1", "fixed, 4, 10"
  })
  void a_column_buckles_bending_and_twisting_at_the_closed_form(
      String ends, double times, double torsion) {
    double euler = times * Math.PI * Math.PI;
    double expected = closedForm(euler, SHEAR * torsion / RADIUS_SQUARED);
    double found = pressed(held(ends, channel(torsion, OFFSET))).factor();
    assertEquals(expected, found, 1e-8 * expected);
    double mirrored = pressed(held(ends, channel(torsion, -OFFSET))).factor();
    assertEquals(expected, mirrored, 1e-8 * expected);
  }

  @Test
  void it_turns_about_a_point_beside_its_shear_centre() {
    double euler = Math.PI * Math.PI / 4;
    double torsional = SHEAR / RADIUS_SQUARED;
    double critical = closedForm(euler, torsional);
    Frame frame = held("free", channel(1, OFFSET));
    CriticalLoad load = pressed(frame);
    // At the shear centre w = (P − PT)·r²·φ/(P·yS); the centroid lies yS from it.
    double across = RADIUS_SQUARED * (critical - torsional) / (critical * OFFSET) - OFFSET;
    assertEquals(across, load.shape("top").ux() / load.shape("top").rz(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.9, -0.5, 0.5, 3})
  void a_pressed_or_pulled_channel_bends_and_twists_as_its_sine_waves_add_up(double part) {
    double euler = Math.PI * Math.PI;
    double torsional = SHEAR / RADIUS_SQUARED;
    double n = part * closedForm(euler, torsional);
    Frame frame = held("pinned", channel(1, OFFSET));
    Response response =
        Solver.secondOrder(frame)
            .solve(
                LoadCase.of(
                    "pushed",
                    new Load.AtNode("top", Wrench.force(0, 0, n)),
                    new Load.AlongBeam("rail", 1, 0, 0)));
    assertTrue(Math.abs(response.residual()) < 1e-9);
    double[] middle = middle(n);
    Displacement at = response.deflection("rail", 0.5);
    assertEquals(middle[1], at.rz(), 1e-6 * Math.abs(middle[1]));
    assertEquals(middle[0], at.ux(), 1e-6 * Math.abs(middle[0]));
  }

  /**
   * Motion of the centroid and turn halfway under a unit line load through the centroid: each sine
   * wave by its own two equations.
   */
  private static double[] middle(double n) {
    double w = 0;
    double turn = 0;
    for (int k = 1; k < 4001; k += 2) {
      double a = k * Math.PI;
      double load = 4 / a;
      double ww = Math.pow(a, 4) + n * a * a;
      double wt = -n * OFFSET * a * a;
      double tt = (SHEAR + n * RADIUS_SQUARED) * a * a;
      // The load acts yS away from the shear centre: w at the centroid is w − yS·φ.
      double q = load;
      double m = -load * OFFSET;
      double det = ww * tt - wt * wt;
      double sign = k % 4 == 1 ? 1 : -1;
      w += sign * (q * tt - m * wt) / det;
      turn += sign * (m * ww - q * wt) / det;
    }
    return new double[] {w - OFFSET * turn, turn};
  }
}

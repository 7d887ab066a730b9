package rungwork.validation;

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
import rungwork.solve.Response;
import rungwork.solve.Solver;

/**
 * Terms of a member's stiffness matrix, found as its definition says: its start fixed, its end
 * moved by one in a single motion, the forces that this takes.
 */
final class GuidedBeam {
  private final double length;
  private final Stock stock;

  GuidedBeam(double length, Stock stock) {
    this.length = length;
    this.stock = stock;
  }

  /** EA/L. */
  double stretching() {
    return 1 / pushed(Freedom.UX, Wrench.force(1, 0, 0)).displacement("B").ux();
  }

  /** 12EI/L³, in plane. */
  double swayInPlane() {
    return 1 / pushed(Freedom.UY, Wrench.force(0, 1, 0)).displacement("B").uy();
  }

  /** 6EI/L², in plane: the moment at the start that goes with a sway of one. */
  double swayMomentInPlane() {
    Response response = pushed(Freedom.UY, Wrench.force(0, 1, 0));
    return -response.reaction("A").mz() / response.displacement("B").uy();
  }

  /** 4EI/L, in plane. */
  double turnInPlane() {
    return 1 / pushed(Freedom.RZ, Wrench.moment(0, 0, 1)).displacement("B").rz();
  }

  /** 2EI/L, in plane: the moment at the start that goes with a turn of one. */
  double farTurnInPlane() {
    Response response = pushed(Freedom.RZ, Wrench.moment(0, 0, 1));
    return response.reaction("A").mz() / response.displacement("B").rz();
  }

  /** 12EI/L³, out of plane. */
  double swayOutOfPlane() {
    return 1 / pushed(Freedom.UZ, Wrench.force(0, 0, 1)).displacement("B").uz();
  }

  /** 6EI/L², out of plane. */
  double swayMomentOutOfPlane() {
    Response response = pushed(Freedom.UZ, Wrench.force(0, 0, 1));
    return response.reaction("A").my() / response.displacement("B").uz();
  }

  /** 4EI/L, out of plane. */
  double turnOutOfPlane() {
    return 1 / pushed(Freedom.RY, Wrench.moment(0, 1, 0)).displacement("B").ry();
  }

  /** 2EI/L, out of plane. */
  double farTurnOutOfPlane() {
    Response response = pushed(Freedom.RY, Wrench.moment(0, 1, 0));
    return response.reaction("A").my() / response.displacement("B").ry();
  }

  /** GJ/L. */
  double twisting() {
    return 1 / pushed(Freedom.RX, Wrench.moment(1, 0, 0)).displacement("B").rx();
  }

  private Response pushed(Freedom free, Wrench unit) {
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(length, 0, 0))
            .beam(Beam.rigid("beam", "A", "B", stock))
            .support(Support.fixed("A"));
    for (Freedom freedom : Freedom.values()) {
      if (freedom != free) {
        frame.support(Support.holding("B", freedom));
      }
    }
    return Solver.of(frame.build()).solve(LoadCase.of("unit", new Load.AtNode("B", unit)));
  }
}

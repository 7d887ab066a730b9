package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
import rungwork.section.Section;
import rungwork.solve.Pushover;
import rungwork.solve.YieldSurface;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;

class CrankedRailTest {
  private static final double MP = 6000;
  private static final YieldSurface BENDING = YieldSurface.ofMoments(MP, MP);
  private static final Section TUBE = Section.squareTube(mm(50), mm(3));
  private static final Stock STOCK = new Stock(TUBE, Runabout.steel(235));
  private static final YieldSurface FULL = YieldSurface.around(TUBE, 235e6);

  private static CrankedRail rail(int hinges, YieldSurface surface) {
    return new CrankedRail(0.2, 0.1, hinges, surface, Optional.empty());
  }

  /** Mp/e with the head free to turn, 2 Mp/e with both ends held. */
  @Test
  void it_begins_at_the_plastic_moments_over_the_rise() {
    assertEquals(MP / 0.1, rail(1, BENDING).force(0), 1e-6);
    assertEquals(2 * MP / 0.1, rail(2, BENDING).force(0), 1e-6);
  }

  /** The work of a moment that stays is moment times turn. */
  @Test
  void the_force_falls_so_that_its_work_is_that_of_the_hinges() {
    List<Collapse.Fallen> branch = rail(2, BENDING).branch();
    for (int i = 1; i < branch.size(); i++) {
      assertTrue(branch.get(i).force() < branch.get(i - 1).force());
      double hinges = 2 * MP * branch.get(i).turn();
      assertEquals(hinges, branch.get(i).energy(), 1e-3 * hinges);
    }
  }

  /** The frame as it stands after each turn, pushed anew: leg between a clamp and a held head. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 20, 30, 40})
  void a_pushover_of_the_turned_frame_finds_the_same_force(double degrees) {
    double turn = Math.toRadians(degrees);
    double slope = Math.atan2(0.1, 0.2) + turn;
    double length = Math.hypot(0.2, 0.1);
    for (int hinges = 1; hinges <= 2; hinges++) {
      Frame.Builder frame =
          Frame.in(Plane.SIDE)
              .node("foot", new Point(0, 0, 0))
              .node("head", new Point(length * Math.cos(slope), 0, length * Math.sin(slope)))
              .beam(Beam.rigid("leg", "foot", "head", STOCK))
              .support(Support.fixed("foot"))
              .support(
                  hinges == 2
                      ? Support.holding("head", Freedom.UY, Freedom.RX, Freedom.RY, Freedom.RZ)
                      : Support.holding("head", Freedom.UY, Freedom.RX, Freedom.RZ));
      LoadCase push = LoadCase.of("push", new Load.AtNode("head", Wrench.force(-1, 0, 0)));
      for (YieldSurface surface : List.of(BENDING.times(0.9), FULL)) {
        double pushed =
            Pushover.of(frame.build(), beam -> turned(surface), LoadCase.of("nothing"), push)
                .collapseFactor();
        assertEquals(
            1,
            rail(hinges, surface).force(turn) / pushed,
            1e-6,
            surface.faces().size() + " faces, " + hinges + " hinges");
      }
    }
  }

  /** In side elevation a square tube's z is the plan's y: the same numbers either way. */
  private static YieldSurface turned(YieldSurface surface) {
    return new YieldSurface(
        surface.faces().stream()
            .map(f -> new YieldSurface.Face(f.n(), f.z(), f.y(), f.t(), f.reach()))
            .toList());
  }

  /** Two rails of 50 × 50 × 3 S235 with 100 mm of rise under 700 kg: 6.4 g, by hand. */
  @Test
  void two_common_rails_give_way_at_six_g() {
    YieldSurface bending = YieldSurface.ofMoments(235e6 * TUBE.properties().wply(), 1e9);
    double force = 2 * new CrankedRail(0.15, 0.1, 1, bending, Optional.empty()).force(0);
    assertEquals(6.4, force / 700 / 9.80665, 0.05 * 6.4);
  }

  @Test
  void walls_that_fold_make_it_fall_faster() {
    FoldingHinge hinge = FoldingHinge.of(TUBE, 235e6, STOCK.material().elasticity()).orElseThrow();
    CrankedRail folding = new CrankedRail(0.2, 0.1, 1, FULL, Optional.of(hinge));
    assertEquals(rail(1, FULL).force(0), folding.force(0), 1e-9);
    assertTrue(folding.force(0.3) < 0.8 * rail(1, FULL).force(0.3));
  }

  @Test
  void a_ladders_kick_ups_come_with_its_collapse() {
    Ladder straight = Runabout.ladder(STOCK.material());
    Ladder cranked = Runabout.cranked(STOCK.material());
    assertEquals(
        List.of(), Collapse.of(Runabout.vehicle(), straight, Event.Hit.FULL_WIDTH).kickUps());
    Collapse collapse = Collapse.of(Runabout.vehicle(), cranked, Event.Hit.FULL_WIDTH);
    Collapse.KickUpFall fall = collapse.kickUps().get(0);
    assertEquals("front", fall.kickUp().name());
    assertEquals(Optional.of(true), fall.tested());
    double low = 235e6 * 0.9 / 1.09 * TUBE.properties().wply() / 0.1;
    assertEquals(1, fall.beginning().low() / low, 0.06, "N takes a part of it");
    assertTrue(fall.beginning().high() > 4 * fall.beginning().low());
    assertEquals(fall.low().size(), fall.high().size());
  }
}

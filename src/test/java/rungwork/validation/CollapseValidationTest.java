package rungwork.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
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
import rungwork.solve.Pushover;
import rungwork.solve.Stocks;
import rungwork.solve.YieldSurface;

/**
 * Collapse loads of plastic theory, bending alone. Lengths and forces in the units of the source.
 */
class CollapseValidationTest {
  private static final Stock STOCK = new Stocks(1000, 400).planar(1e6, 1);
  private static final Function<Beam, YieldSurface> UNIT = beam -> YieldSurface.ofMoments(1, 1);

  private static Frame.Builder line(double... x) {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i < x.length; i++) {
      frame.node("n" + i, new Point(x[i], 0, 0));
      if (i > 0) {
        frame.beam(Beam.rigid("b" + i, "n" + (i - 1), "n" + i, STOCK));
      }
    }
    return frame;
  }

  private static Support roller(String node) {
    return Support.holding(node, Freedom.UY, Freedom.UZ, Freedom.RX);
  }

  private static Support hinge(String node) {
    return Support.holding(node, Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY);
  }

  private static Load push(String node, double fx, double fy) {
    return new Load.AtNode(node, Wrench.force(fx, fy, 0));
  }

  private static Pushover of(Frame.Builder frame, Load... loads) {
    return Pushover.of(frame.build(), UNIT, LoadCase.of("none"), LoadCase.of("push", loads));
  }

  private static Frame.Builder portal(double height, double span) {
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(0, height, 0))
            .node("C", new Point(span / 2, height, 0))
            .node("D", new Point(span, height, 0))
            .node("E", new Point(span, 0, 0));
    for (String ends : new String[] {"AB", "BC", "CD", "DE"}) {
      frame.beam(Beam.rigid(ends, ends.substring(0, 1), ends.substring(1), STOCK));
    }
    return frame;
  }

  @Test
  void a_portal_on_hinges() {
    Pushover portal =
        of(
            portal(24, 20).support(hinge("A")).support(hinge("E")),
            push("C", 0, -74),
            push("B", 22.2, 0));
    Published.read(
            "Hicks (ed.), Handbook of Civil Engineering Calculations, 2nd ed., p. 1.126",
            "pinned portal, ultimate loads 74 and 22.2 kip")
        .value("plastic moment", "kip·ft", "318.2", 1 / portal.collapseFactor());
    assertEquals(Set.of("C", "D"), hinges(portal), "as the source prints them");
  }

  /** The nodes at which a frame yields when it collapses. */
  private static Set<String> hinges(Pushover pushover) {
    List<Pushover.Stage> stages = pushover.stages();
    return stages.get(stages.size() - 1).hinges().stream()
        .map(Pushover.Place::node)
        .collect(Collectors.toSet());
  }

  /** The nodes in the order in which hinges open there. */
  private static List<String> order(Pushover pushover) {
    return pushover.stages().stream()
        .flatMap(stage -> stage.opened().stream())
        .map(Pushover.Place::node)
        .toList();
  }

  @Test
  void a_beam_of_two_spans() {
    Pushover beam =
        of(
            line(0, 14, 30, 42, 66)
                .support(hinge("n0"))
                .support(roller("n2"))
                .support(roller("n4")),
            push("n1", 0, -1),
            push("n3", 0, -1));
    Published.read(
            "Hicks (ed.), Handbook of Civil Engineering Calculations, 2nd ed., p. 1.120",
            "two spans, equal loads, Mp = 268.8 kip·ft")
        .value("load", "kip", "52.8", 268.8 * beam.collapseFactor());
    assertEquals(
        Set.of("n1", "n2"), hinges(beam), "under the first load and at the middle support");
  }

  @Test
  void a_portal_clamped_at_its_feet() {
    Pushover portal =
        of(
            portal(0.5, 1).support(Support.fixed("A")).support(Support.fixed("E")),
            push("C", 0, -1.5),
            push("B", 1, 0));
    Published.read(
            "Hicks, Civil Engineering Formulas, fig. 2.11", "fixed portal, V = 1.5 H, h = L/2")
        .value("lateral force", "Mp/L", "4.8", portal.collapseFactor())
        .value("vertical force", "Mp/L", "7.2", 1.5 * portal.collapseFactor());
    assertEquals(List.of("D", "E", "C", "A"), order(portal), "far eaves first, near base last");
    double[] levels = {4.10, 4.28, 4.32, 4.80};
    for (int i = 0; i < levels.length; i++) {
      assertEquals(
          levels[i],
          portal.stages().get(i + 1).factor(),
          0.01,
          "by hand, members that do not stretch");
    }
  }

  @Test
  void beams_of_one_span() {
    double clamped =
        of(
                line(0, 0.5, 1).support(Support.fixed("n0")).support(Support.fixed("n2")),
                push("n1", 0, -1))
            .collapseFactor();
    double simple =
        of(line(0, 0.5, 1).support(hinge("n0")).support(roller("n2")), push("n1", 0, -1))
            .collapseFactor();
    Published.read("worked assignment on plastic collapse", "fixed beam, central load")
        .value("load, Mp 323.35 kN·m, 4 m", "kN", "646.7", clamped * 323.35 / 4)
        .value("load, Mp 797.09 kN·m, 5 m", "kN", "1275.34", clamped * 797.09 / 5);
    Published.memory(
            "Neal, The Plastic Methods of Structural Analysis", "simple beam, central load")
        .value("load", "Mp/L", "4", simple);
    Pushover propped =
        of(line(0, 0.5, 1).support(Support.fixed("n0")).support(roller("n2")), push("n1", 0, -1));
    Published.memory("Neal; Horne, recomputed", "propped cantilever, central load")
        .value("first hinge", "Mp/L", "5.333", propped.firstHingeFactor())
        .value("collapse", "Mp/L", "6.000", propped.collapseFactor());
    assertEquals(List.of("n0", "n1"), order(propped));
  }

  @Test
  void two_beams_that_cross() {
    Frame.Builder frame =
        Frame.in(Plane.PLAN)
            .node("C", new Point(0, 0, 0))
            .node("W", new Point(-1, 0, 0))
            .node("E", new Point(1, 0, 0))
            .node("S", new Point(0, -1, 0))
            .node("N", new Point(0, 1, 0));
    for (String end : new String[] {"W", "E", "S", "N"}) {
      frame.beam(Beam.rigid(end, end, "C", STOCK));
      frame.support(Support.holding(end, Freedom.UX, Freedom.UY, Freedom.UZ));
    }
    Pushover crossing = of(frame, new Load.AtNode("C", Wrench.force(0, 0, -1)));
    Published.read(
            "Chen and Liew (eds), The Civil Engineering Handbook, 2nd ed., p. 47-130",
            "two equal beams of span 2L joined at their middle")
        .value("load", "Mp/L", "4", crossing.collapseFactor());
  }
}

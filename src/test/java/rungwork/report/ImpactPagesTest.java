package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.ms;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.check.Caution;
import rungwork.impact.Collapse;
import rungwork.impact.Crash;
import rungwork.impact.CrashModel;
import rungwork.impact.CrushCurve;
import rungwork.impact.CrushTube;
import rungwork.impact.Fronts;
import rungwork.impact.Obstacle;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.Pulse;
import rungwork.impact.Range;
import rungwork.impact.RigidOrCrush;
import rungwork.impact.Runabout;
import rungwork.impact.Scene;
import rungwork.impact.SeenDamage;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.study.Curlew;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;

/** What must be true of every page about a crash. */
class ImpactPagesTest {
  private static final RigidOrCrush CHOICE = Fronts.choice();
  private static final Crash CRASH = crash();
  private static final Collapse LEFT =
      Collapse.of(Runabout.vehicle(), Runabout.ladder(Runabout.steel(235)), Event.Hit.LEFT_TIP);
  private static final Collapse CRANKED =
      Collapse.of(Runabout.vehicle(), Runabout.cranked(Runabout.steel(235)), Event.Hit.FULL_WIDTH);
  private static final SeenDamage.Explanations DAMAGE =
      SeenDamage.named("corner")
          .diagonals("front", "rear", mm(-12), mm(3))
          .sag("middle left", List.of("front left", "rear left"), mm(0), mm(2000))
          .under(LEFT);

  private static final OrderOfFailure ORDER = order(100);

  private static OrderOfFailure order(double rise) {
    Ladder ladder =
        Curlew.parts()
            .rails(mm(450), mm(-2350), mm(800), Curlew.tube(80, 40))
            .kickUp("front", mm(-100), mm(150), mm(rise))
            .build();
    return OrderOfFailure.of(Curlew.vehicle(), ladder, Event.Hit.FULL_WIDTH)
        .with(
            OrderOfFailure.Part.named("lap anchor", OrderOfFailure.Zone.BELT_ANCHORS, mm(-1200))
                .yields(g(14), g(20), "a chain, invented")
                .breaks(g(25), g(36)))
        .behind(Fronts.tube(), 2)
        .without(OrderOfFailure.Zone.TYRE_AND_BUMPER);
  }

  private static Crash crash() {
    CrushCurve shorter =
        CrushCurve.named("short rails")
            .to(mm(10), kN(180), "first yield")
            .to(mm(100), kN(190))
            .end();
    CrashModel.Motor motor = CrashModel.Motor.of("motor", kg(58)).on(kNpmm(0.6), mm(12), kNpmm(8));
    return CrashModel.of("short", kmh(50), kg(720), shorter).with(motor).run();
  }

  static List<Object> values() {
    Pulse cut = Pulse.through("cut", new double[] {0, 0.05}, new double[] {0, 200});
    return List.of(
        Fronts.wall(),
        Scene.of("mistyped", kmh(240), kg(720), Obstacle.post(mm(350), mm(200))),
        Scene.of("meeting", kmh(80), kg(720), Obstacle.vehicle(kg(1400), kNpmm(1))),
        Scene.of("meeting", kmh(80), kg(720), Obstacle.vehicle(kg(1400), kNpmm(1)))
            .springs(kNpmm(0.5)),
        Pulse.haversine(g(30), ms(90)),
        cut,
        Fronts.tube(),
        Fronts.tube().hitAt(kmh(50)),
        CRASH,
        CHOICE.outcomes().get(1).crashes().get(0),
        Fronts.driver().in(kmh(50), cut),
        Fronts.driver().closedForms(g(20), kmh(48)).get(0),
        Fronts.driver().closedForms(g(20), kmh(300)).get(0),
        CHOICE,
        ORDER,
        LEFT,
        CRANKED,
        DAMAGE,
        FasterHits.of(CHOICE, List.of(kmh(30), kmh(50))));
  }

  private static Page page(Object value, Units units) {
    return Presentation.all().stream()
        .filter(one -> one.type().isInstance(value))
        .findFirst()
        .orElseThrow(() -> new AssertionError(value.getClass().getName()))
        .page(value, units);
  }

  @ParameterizedTest
  @MethodSource("values")
  void no_page_about_a_crash_loses_a_caution(Object value) {
    Page page = page(value, Units.METRIC);
    for (Caution caution : Caution.values()) {
      assertTrue(Xml.seen(page.html()).contains(caution.text()), caution.name());
      assertTrue(page.text().replaceAll("\\s+", " ").contains(caution.text()), caution.name());
    }
  }

  @ParameterizedTest
  @MethodSource("values")
  void no_page_about_a_crash_calls_anything_safe(Object value) {
    String seen = Xml.seen(page(value, Units.METRIC).html()).toLowerCase(Locale.ROOT);
    assertFalse(seen.matches("(?s).*\\b(ok|safe|surviv\\w*|volunteer\\w*)\\b.*"), seen);
  }

  @Test
  void faster_hits_say_in_print_what_their_page_says() {
    FasterHits hits = FasterHits.of(CHOICE, List.of(kmh(30), kmh(50)));
    assertEquals(hits.page(Units.METRIC).text(), hits.toString());
  }

  @ParameterizedTest
  @MethodSource("values")
  void html_is_sound_and_text_the_same_every_time(Object value) {
    Page page = page(value, Units.METRIC);
    Xml.parse(page.html());
    assertFalse(page.text().contains("<"), page.text());
    assertEquals(page.html(), page(value, Units.METRIC).html());
  }

  @ParameterizedTest
  @MethodSource("values")
  void inch_pound_pages_show_no_metric_unit(Object value) {
    Page page = page(value, Units.INCH_POUND);
    for (String shown : List.of(Xml.seen(page.html()), page.text())) {
      assertFalse(
          shown.matches("(?s).*(\\d |\\[)(mm|cm.|kN|kJ|MPa|GPa|N|km/h|kg|N/mm)[\\],;.)\\s].*"),
          shown);
    }
  }

  @Test
  void the_page_of_a_collapse_numbers_its_hinges_in_order_and_draws_them() {
    Page page = page(LEFT, Units.METRIC);
    Collapse.Path weakest = LEFT.deciding(CrushTube.Strength.LOW);
    String text = page.text();
    assertTrue(text.contains("Hinges of the weakest run: " + weakest.of().words()), text);
    assertTrue(
        Xml.seen(page.html()).contains("1 " + weakest.first().opened().get(0).words()), text);
    assertTrue(text.contains("moves on by itself"), text);
    assertTrue(Xml.seen(page.html()).contains("mechanism: moves on so"));
    Collapse wall =
        Collapse.of(Runabout.vehicle(), Runabout.ladder(Runabout.steel(235)), Event.Hit.FULL_WIDTH);
    Xml.parse(page(wall, Units.METRIC).html());
  }

  @Test
  void the_page_of_a_damage_says_what_shows_and_what_yielded() {
    String text = page(DAMAGE, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(text.contains("not to be told from nothing"), text);
    assertTrue(text.contains("If it was hit at the left tip"), text);
    assertTrue(text.contains("Not checked: welds, bolts, tabs and mounts"), text);
    SeenDamage.Explanations none =
        SeenDamage.named("none")
            .diagonals("front", "rear", mm(0), mm(2))
            .shorter("left tip", "left tail", mm(-500), mm(1))
            .under(LEFT);
    String other = page(none, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(other.contains("Not explained: no run leaves all of this behind"), other);
    SeenDamage.Explanations little =
        SeenDamage.named("little").diagonals("front", "rear", mm(0), mm(2)).under(LEFT);
    String small = page(little, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(small.contains("Nothing stands out of its tolerance"), small);
  }

  @Test
  void a_plot_scales_its_curves_to_its_axes() {
    Plot plot =
        Plot.of(
                "ramp",
                new Plot.Axis("time", Kind.TIME),
                new Plot.Axis("deceleration", Kind.ACCELERATION),
                List.of(
                    new Plot.Curve(
                        "ramp",
                        "first",
                        new double[] {0, 0.05, 0.1},
                        new double[] {0, 98.0665, 0})))
            .with(List.of(new Plot.Mark(0.05, "peak")));
    Picture picture = plot.picture(Units.METRIC);
    Drawings.holds(picture);
    double[] places = Drawings.places(Xml.all(picture.svg(), "polyline").get(0));
    assertEquals(places[4] / 2, places[2], 0.01);
    assertEquals(-250, places[3], 0.01);
    assertTrue(Drawings.words(picture).contains("ramp, at most 10.0 g"));
    assertTrue(Drawings.words(picture).contains("peak"));
    assertTrue(Drawings.words(picture).contains("time [ms]"));
  }

  @Test
  void a_crash_page_names_its_events_parts_and_marks() {
    String text = page(CRASH, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(text.contains("short rails: first yield"), text);
    assertTrue(text.contains("motor meets its stop"), text);
    assertTrue(text.contains("passes the end of its curve"), text);
    assertTrue(text.contains("Energy balance open by"), text);
  }

  @Test
  void a_person_s_page_says_what_cannot_be_claimed_and_what_was_not_checked() {
    String text =
        page(CHOICE.outcomes().get(0).ride(), Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(
        text.contains(
            "Measured on instrumented dummies with designed restraints; this calculation cannot"
                + " claim them."));
    assertTrue(text.contains("head and neck"));
    assertTrue(text.contains("22.24 kN"));
    assertTrue(text.contains("the larger of the two"));
  }

  @Test
  void the_comparison_shows_the_order_of_giving_way_in_one_line() {
    String text = page(CHOICE, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(text.contains("bare rails: nothing in front."), text);
    assertTrue(
        text.contains("two folding tubes: frame's first yield over the folding peak in front "),
        text);
  }

  @Test
  void the_order_of_failure_shows_every_part_and_those_not_checked() {
    String text = page(ORDER, Units.METRIC).text().replaceAll("\\s+", " ");
    assertTrue(text.contains("In this order, at the low strengths: 1. "), text);
    for (OrderOfFailure.Part part : ORDER.parts()) {
      assertTrue(text.contains(part.name()), part.name());
    }
    assertTrue(text.contains("motor mounts not checked not checked no figures given"), text);
    assertTrue(text.contains("given: a chain, invented"), text);
    assertTrue(text.contains("Capacity design: strength of "), text);
    assertTrue(text.contains("at the same: pitch, nose down"), text);
    assertTrue(text.contains("at the same: yaw, none 0 rad/s²"), text);
  }

  @Test
  void the_order_of_failure_is_drawn_from_above_from_the_side_and_as_bars() {
    Picture plan = new OrderDrawing(ORDER, Units.METRIC).draw();
    Picture bars = new OrderBars(ORDER, Units.METRIC).draw();
    Drawings.holds(plan);
    Drawings.holds(bars);
    assertTrue(Drawings.words(plan).contains("obstacle 480 mm up"));
    assertTrue(Drawings.words(plan).contains("rails 380 mm up"));
    for (int i = 1; i < ORDER.order().size(); i++) {
      String number = String.valueOf(i);
      assertTrue(Drawings.words(bars).contains(number), number);
    }
    assertEquals(3, Drawings.words(bars).stream().filter("not checked"::equals).count());
    assertTrue(
        OrderOfFailure.shown(new Range(Kind.ACCELERATION, 99, 9e4), Units.METRIC)
            .equals("10.1 to over 1000 g"));
    assertEquals(
        "over 1000 g", OrderOfFailure.shown(new Range(Kind.ACCELERATION, 9e4, 9e4), Units.METRIC));
  }

  @Test
  void a_pulse_that_does_not_end_says_so_on_its_page() {
    Pulse cut = Pulse.through("cut", new double[] {0, 0.05}, new double[] {0, 200});
    assertTrue(
        page(cut, Units.METRIC).text().replaceAll("\\s+", " ").contains("Pulse cut does not end"));
  }
}

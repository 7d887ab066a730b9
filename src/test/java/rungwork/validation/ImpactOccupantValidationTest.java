package rungwork.validation;

import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.s;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.impact.Occupant;
import rungwork.impact.Pulse;
import rungwork.impact.Ride;

/** A person of 60 kg on a belt of 70 kN/m, in closed form and integrated. */
class ImpactOccupantValidationTest {
  private static final double G = 9.80665;

  private static Occupant person(double slack) {
    return Occupant.of("person", kg(60), Occupant.Belt.of(Npmm(70), mm(slack)));
  }

  private static double longPulse(double slack) {
    return person(slack).closedForms(g(20), kmh(500)).get(0).peak().result() / G;
  }

  /** From 48 km/h at 20 g the vehicle stands after 68 ms. */
  private static double from48(double slack) {
    double stops = 48 / 3.6 / (20 * G);
    return person(slack).in(kmh(48), Pulse.square(g(20), s(stops))).peak().high() / G;
  }

  @Test
  void long_pulse_in_closed_form() {
    Published.derived("a·(1 + √(1 + 2·s·ω²/a)), computed apart", "20 g held, 70 kN/m, 60 kg")
        .value("peak without slack", "g", "40.0", longPulse(0))
        .value("peak with 25 mm slack", "g", "42.8", longPulse(25))
        .value("peak with 50 mm slack", "g", "45.3", longPulse(50));
  }

  @Test
  void integrated_while_the_vehicle_stops_first() {
    Published.derived(
            "mass on a spring in pieces (slack, pulse, after it), computed apart",
            "48 km/h at 20 g, 70 kN/m, 60 kg")
        .value("vehicle stands after", "ms", "68", 1e3 * 48 / 3.6 / (20 * G))
        .value("peak without slack", "g", "36.7", from48(0))
        .value("peak with 25 mm slack", "g", "38.9", from48(25))
        .value("peak with 50 mm slack", "g", "40.5", from48(50))
        .value("peak with 75 mm slack", "g", "41.8", from48(75));
  }

  @Test
  void a_rigid_stop() {
    Occupant.ClosedForm form = person(0).closedForms(g(20), kmh(48)).get(0);
    Pulse sudden = Pulse.square(g(48 / 3.6 / 1e-5 / G), s(1e-5));
    Ride ride = person(0).in(kmh(48), sudden);
    Published.identity("v·√(k/m) and v·√(m/k)", "48 km/h, 70 kN/m, 60 kg")
        .value("peak", "g", "46.4", form.most().result() / G)
        .value("peak, integrated", "g", "46.4", ride.peak().high() / G)
        .value("excursion, integrated", "m", "0.390", ride.excursion().high());
  }

  @Test
  void the_pull_of_75_kg() {
    Published.identity("m·a, g 9.80665 m/s²", "75 kg, all straps together")
        .value("at 20 g", "kN", "14.7", pull(20))
        .value("at 30 g", "kN", "22.1", pull(30))
        .value("at 40 g", "kN", "29.4", pull(40))
        .value("at 60 g", "kN", "44.1", pull(60));
  }

  /** A belt so stiff that the person decelerates with the vehicle, under a slow pulse. */
  private static double pull(double level) {
    Pulse slow = Pulse.haversine(g(level), s(1));
    Occupant stiff = Occupant.of("person", kg(75), Occupant.Belt.of(Npmm(20000), mm(0)));
    return stiff.in(kmh(500), slow).beltForce().high() / 1e3;
  }

  private static double printed(List<Ride.Published> figures, String what, double unit) {
    return figures.stream().filter(one -> one.what().equals(what)).findFirst().orElseThrow().value()
        / unit;
  }

  /** What stands beside results as context, back in the units of its source. */
  @Test
  void published_figures_are_those_of_their_sources() {
    List<Ride.Published> limits = Ride.publishedLimits();
    List<Ride.Published> items = Ride.publishedItemLoads();
    List<Ride.Published> belts = Ride.publishedTestLoads();
    Published.read("14 CFR 25.562(b)(2)", "seat test, forward")
        .value("peak", "g", "16", printed(limits, "seat test, forward: peak at least", G))
        .value(
            "time of the peak",
            "s",
            "0.09",
            printed(limits, "seat test, forward: peak not later than", 1))
        .value(
            "velocity change",
            "ft/s",
            "44",
            printed(limits, "seat test, forward: velocity change at least", 0.3048))
        .value(
            "velocity change",
            "m/s",
            "13.41",
            printed(limits, "seat test, forward: velocity change at least", 1));
    Published.read("14 CFR 25.561(b)(3)", "heavy items, ultimate")
        .value("forward", "g", "9.0", printed(items, "heavy items, forward", G))
        .value("sideward", "g", "3.0", printed(items, "heavy items, sideways", G))
        .value("downward", "g", "6.0", printed(items, "heavy items, down", G))
        .value("upward", "g", "3.0", printed(items, "heavy items, up", G));
    Published.read("49 CFR 571.210, S4.2, as NHTSA interpretations print it", "anchorage test load")
        .value("lap alone", "N", "22241", printed(belts, "lap belt alone, on all", 1))
        .value(
            "lap with shoulder",
            "N",
            "13345",
            printed(belts, "lap part, with the shoulder part", 1))
        .value(
            "shoulder with lap",
            "N",
            "13345",
            printed(belts, "shoulder part, with the lap part", 1));
    Published.read("49 CFR 571.208, as an NHTSA notice prints it", "instrumented dummy")
        .value("chest, 3 ms", "g", "60", printed(limits, "chest, 3 ms", G));
    Published.memory("49 CFR 571.208, S6", "instrumented dummy")
        .value("thigh force", "kN", "10", printed(limits, "thigh force, not computed here", 1e3));
  }

  /** v²/(2·(dᵥ + dₒ)) with 0.2 m of crush and 0.25 m in the vehicle. */
  @Test
  void the_least_on_two_distances() {
    double speed = 48 / 3.6;
    Pulse square = Pulse.square(g(speed * speed / (2 * 0.2) / G), s(2 * 0.2 / speed));
    Ride ride = person(0).in(kmh(48), square);
    double way = ride.excursion().high();
    Published.identity("v²/(2·(0.2 + 0.25 m))", "48 km/h, both ways used evenly")
        .value(
            "from the page's figure, scaled to 0.25 m",
            "g",
            "20.1",
            ride.bestCase().high() / G * (0.2 + way) / 0.45);
  }
}

package rungwork.validation;

import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.s;

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
}

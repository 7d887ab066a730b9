package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;

class VehicleTest {
  private static final double G = 9.80665;

  @Test
  void axle_loads_balance_moments_about_the_front_axle() {
    Vehicle vehicle = Curlew.vehicle();
    double rearMoment = 180 * 1.1 + 150 * 1.9 - 140 * 0.15 + 2 * 75 * 1.05;
    assertEquals(620, vehicle.massTotal(), 1e-9);
    assertEquals(rearMoment * G / 2.2, vehicle.axleLoads().get(Axle.REAR), 1e-6);
    assertEquals(620 * G - rearMoment * G / 2.2, vehicle.axleLoads().get(Axle.FRONT), 1e-6);
  }

  @Test
  void wheel_loads_balance_in_all_that_four_forces_can() {
    Vehicle vehicle =
        Curlew.parts()
            .track(mm(1300), mm(1200))
            .mass("tool box", kg(30), Curlew.at(-300, 500, 500), "middle left")
            .build();
    double force = 0;
    double aboutX = 0;
    double aboutY = 0;
    for (var entry : vehicle.wheelLoads().entrySet()) {
      force += entry.getValue();
      aboutX += entry.getValue() * entry.getKey().contact().y();
      aboutY += entry.getValue() * entry.getKey().contact().x();
    }
    assertEquals(vehicle.weight(), force, 1e-8);
    assertEquals(30 * 0.5 * G, aboutX, 1e-8);
    assertEquals(vehicle.weight() * vehicle.centreOfMass().x(), aboutY, 1e-8);
  }

  @Test
  void the_frames_own_mass_joins_the_vehicle_on_its_ladder() {
    Ladder ladder = Curlew.ladder();
    Vehicle complete = Curlew.vehicle().on(ladder);
    assertEquals(620 + ladder.mass(), complete.massTotal(), 1e-9);
    assertEquals(0, complete.centreOfMass().y(), 1e-12);
  }

  @Test
  void a_centre_of_mass_outside_the_wheels_is_refused() {
    message(
        "the centre of mass of vehicle tip is at x 100.0 mm, outside the axles at 0 and -2200 mm:"
            + " a wheel would lift",
        parts("tip").mass("all", kg(100), Curlew.at(100, 0, 500), "front left"));
    message(
        "the centre of mass of vehicle tip is at y -700.0 mm, outside the front track of 1300 mm:"
            + " a wheel would lift",
        parts("tip").mass("all", kg(100), Curlew.at(-100, -700, 500), "front left"));
  }

  @Test
  void masses_that_sum_to_nothing_are_refused() {
    message("vehicle empty has no masses; its load is nothing", parts("empty"));
    assertEquals(
        "mass air 0 kg is not above zero",
        assertThrows(
                ModelException.class,
                () -> parts("empty").mass("air", kg(0), Curlew.at(0, 0, 0), "front left"))
            .getMessage());
  }

  @Test
  void what_is_missing_is_named() {
    VehicleBuilder bare =
        Vehicle.named("bare").mass("all", kg(100), Curlew.at(-100, 0, 500), "front left");
    message("vehicle bare has no wheelbase; give it one", bare);
    message("vehicle bare has no track; give it one", bare.wheelbase(mm(2000)));
    message("vehicle bare has no front roll share; give it one", bare.track(mm(1200), mm(1200)));
    message("front left wheel is held by nothing; name its mounts", bare.frontRollShare(0.5));
  }

  @Test
  void doubtful_names_and_figures_are_refused() {
    refused(
        "vehicle Curlew has two masses named battery; rename one",
        () -> Curlew.parts().mass("battery", kg(1), Curlew.at(0, 0, 0), "front left"));
    refused(
        "vehicle Curlew has no mass named engine; it has battery, load, front body, left person,"
            + " right person",
        () -> Curlew.parts().sprung("engine", 1.5));
    refused(
        "amplification 2.500 of mass battery is outside 1 (rigid) to 2 (a spring under a sudden"
            + " load)",
        () -> Curlew.parts().sprung("battery", 2.5));
    refused("front roll share 1.200 is outside 0 to 1", () -> Curlew.parts().frontRollShare(1.2));
    refused(
        "mass horn is carried by no node; name one at least",
        () -> Curlew.parts().mass("horn", kg(1), Curlew.at(0, 0, 0)));
  }

  @Test
  void a_carrier_that_the_ladder_lacks_is_named() {
    Ladder ladder = Curlew.ladder();
    Vehicle vehicle = Curlew.parts().mass("horn", kg(1), Curlew.at(0, 0, 500), "bonnet").build();
    refused(
        "mass horn is carried by bonnet, which ladder Curlew does not have; it has "
            + String.join(", ", ladder.layout().features()),
        () -> vehicle.on(ladder));
  }

  @Test
  void a_mass_that_repeats_a_piece_of_the_frame_is_refused() {
    Vehicle vehicle =
        Curlew.parts().mass("left rail 2", kg(7), Curlew.at(-300, 400, 380), "left tip").build();
    refused(
        "mass left rail 2 has the name of a piece of ladder Curlew, which counts by itself; rename"
            + " or remove it",
        () -> vehicle.on(Curlew.ladder()));
  }

  @Test
  void the_card_shows_what_a_weighbridge_would() {
    assertEquals(
        """
        Vehicle Curlew: 620.0 kg, wheelbase 2200 mm, track 1300 mm front and 1300 mm rear
          centre of mass 999.2 mm behind the front axle, 0 mm to the left, 584.0 mm up
          axle loads 3.319 kN front, 2.761 kN rear
          front left wheel 1.659 kN
          front right wheel 1.659 kN
          rear left wheel 1.381 kN
          rear right wheel 1.381 kN""",
        Curlew.vehicle().toString());
  }

  private static VehicleBuilder parts(String name) {
    return Vehicle.named(name)
        .wheelbase(mm(2200))
        .track(mm(1300), mm(1300))
        .frontRollShare(0.5)
        .wheel(Axle.FRONT, Side.LEFT, "front left")
        .wheel(Axle.FRONT, Side.RIGHT, "front right")
        .wheel(Axle.REAR, Side.LEFT, "rear left")
        .wheel(Axle.REAR, Side.RIGHT, "rear right");
  }

  private static void message(String message, VehicleBuilder parts) {
    refused(message, parts::build);
  }

  private static void refused(String message, org.junit.jupiter.api.function.Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }
}

package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rungwork.check.DesignFactor;
import rungwork.fault.ModelException;
import rungwork.frame.Wrench;
import rungwork.solve.AppliedWrench;

class EventTest {
  private static final FrontalPush WALL =
      new FrontalPush(Event.Hit.FULL_WIDTH, 100, OptionalDouble.empty());

  private static final double G = 9.80665;

  @Test
  void a_bump_multiplies_one_axle_only() {
    List<Wrench> standing = forces(Event.standing());
    List<Wrench> bump = forces(Event.bumpBothWheels(Axle.REAR, 2.5));
    assertEquals(standing.get(0), bump.get(0));
    assertEquals(2.5 * standing.get(2).fz(), bump.get(2).fz(), 1e-9);
    assertEquals(2.5 * standing.get(3).fz(), bump.get(3).fz(), 1e-9);
  }

  @Test
  void one_wheel_up_takes_all_load_off_a_wheel_of_the_lighter_axle() {
    List<Wrench> bump = forces(Event.bumpOneWheel(Axle.FRONT, Side.LEFT));
    double rear = Curlew.vehicle().axleLoads().get(Axle.REAR);
    double front = Curlew.vehicle().axleLoads().get(Axle.FRONT);
    assertEquals(0, bump.get(2).fz(), 1e-9);
    assertEquals(1.3 * rear, bump.get(3).fz(), 1e-9);
    assertEquals(1.3 * (front / 2 + rear / 2), bump.get(0).fz(), 1e-9);
    assertEquals(1.3 * (front / 2 - rear / 2), bump.get(1).fz(), 1e-9);
  }

  @Test
  void the_raised_wheel_is_the_one_that_was_named() {
    List<Wrench> bump = forces(Event.bumpOneWheel(Axle.REAR, Side.RIGHT));
    double rear = Curlew.vehicle().axleLoads().get(Axle.REAR);
    assertEquals(0, bump.get(2).fz(), 1e-9);
    assertEquals(1.3 * rear, bump.get(3).fz(), 1e-9);
    assertTrue(bump.get(0).fz() > bump.get(1).fz());
  }

  @Test
  void pure_twist_is_two_couples_and_no_weight() {
    List<Wrench> twist = forces(Event.pureTwist());
    double couple = Curlew.vehicle().axleLoads().get(Axle.REAR) / 2 * 1.3;
    assertEquals(couple, (twist.get(0).fz() - twist.get(1).fz()) * 0.65, 1e-9);
    assertEquals(-couple, (twist.get(2).fz() - twist.get(3).fz()) * 0.65, 1e-9);
    assertEquals(0, twist.stream().mapToDouble(Wrench::fz).sum(), 1e-9);
  }

  @Test
  void braking_moves_load_forward_and_splits_with_it() {
    List<Wrench> braking = forces(Event.braking(g(0.8)));
    Vehicle vehicle = Curlew.vehicle();
    double moved = 620 * 0.8 * G * vehicle.centreOfMass().z() / 2.2;
    double front = vehicle.axleLoads().get(Axle.FRONT) + moved;
    assertEquals(front / 2, braking.get(0).fz(), 1e-9);
    assertEquals(-0.8 * front / 2, braking.get(1).fx(), 1e-9);
    assertEquals(-0.8 * 620 * G, braking.stream().mapToDouble(Wrench::fx).sum(), 1e-8);
  }

  @Test
  void cornering_moves_load_outwards_by_roll_share_and_pushes_inwards() {
    List<Wrench> left = forces(Event.cornering(Side.LEFT, g(0.6)));
    Vehicle vehicle = Curlew.vehicle();
    double rolling = 620 * 0.6 * G * vehicle.centreOfMass().z();
    double front = vehicle.axleLoads().get(Axle.FRONT);
    assertEquals(front / 2 - 0.55 * rolling / 1.3, left.get(0).fz(), 1e-9);
    assertEquals(front / 2 + 0.55 * rolling / 1.3, left.get(1).fz(), 1e-9);
    assertEquals(0.6 * front, left.get(0).fy() + left.get(1).fy(), 1e-9);
    assertEquals(0.6 * left.get(1).fz(), left.get(1).fy(), 1e-9);
    List<Wrench> right = forces(Event.cornering(Side.RIGHT, g(0.6)));
    assertEquals(left.get(0).fz(), right.get(1).fz(), 1e-9);
    assertEquals(-left.get(0).fy(), right.get(1).fy(), 1e-9);
  }

  @Test
  void a_wheel_that_would_lift_is_refused_with_the_limit() {
    double rear = Curlew.vehicle().axleLoads().get(Axle.REAR);
    double limit = rear / (620 * Curlew.vehicle().centreOfMass().z() / 2.2) / G;
    assertEquals(1.711, limit, 5e-4);
    refused(
        "braking at 2.000 g lifts the rear axle of vehicle Curlew off the ground; it stays down to"
            + " 1.711 g",
        Event.braking(g(2)));
    double front = Curlew.vehicle().axleLoads().get(Axle.FRONT) / 2;
    double frontLimit = front / (0.55 * 620 * Curlew.vehicle().centreOfMass().z() / 1.3) / G;
    assertEquals(1.104, frontLimit, 5e-4);
    refused(
        "cornering at 1.200 g lifts the front left wheel of vehicle Curlew off the ground; it stays"
            + " down to 1.104 g",
        Event.cornering(Side.LEFT, g(1.2)));
    assertEquals(frontLimit * G, Curlew.vehicle().corneringLimit(), 1e-9);
  }

  @Test
  void factors_of_nothing_are_refused() {
    message("bump factor 0 is not above zero", () -> Event.bumpBothWheels(Axle.FRONT, 0));
    message("braking -1.000 g is not above zero", () -> Event.braking(g(-1)));
    message(
        "frontal impact 0 g is not above zero", () -> Event.frontalImpact(g(0), Event.Hit.CENTRE));
  }

  @Test
  void driving_keeps_two_thirds_of_yield_and_an_impact_all_of_it() {
    assertEquals(DesignFactor.ROAD, Event.standing().designFactor());
    assertEquals(DesignFactor.NONE, Event.frontalImpact(g(20), Event.Hit.CENTRE).designFactor());
  }

  @Test
  void an_impact_is_the_sum_of_amplified_masses_times_the_deceleration() {
    Ladder ladder = Curlew.ladder();
    Vehicle vehicle = Curlew.vehicle().on(ladder);
    double amplified = 470 + 1.5 * 150 + ladder.mass();
    for (Event.Hit hit : Event.Hit.values()) {
      double force =
          Event.frontalImpact(g(20), hit).scene().on(vehicle, ladder).stream()
              .mapToDouble(push -> push.wrench().fx())
              .sum();
      assertEquals(-amplified * 20 * G, force, 1e-6);
    }
  }

  @Test
  void a_wall_splits_evenly_on_a_symmetric_vehicle_and_by_lever_on_another() {
    Ladder ladder = Curlew.ladder();
    Event wall = Event.frontalImpact(g(20), Event.Hit.FULL_WIDTH);
    List<AppliedWrench> even = wall.scene().on(Curlew.vehicle().on(ladder), ladder);
    assertEquals(even.get(0).wrench().fx(), even.get(1).wrench().fx(), 1e-6);
    Vehicle flat = Flat.vehicle();
    List<AppliedWrench> uneven = wall.scene().on(flat.on(ladder), ladder);
    double share = (flat.on(ladder).centreOfMass().y() + 0.4) / 0.8;
    double total = uneven.get(0).wrench().fx() + uneven.get(1).wrench().fx();
    assertTrue(share > 0.55, "the centre of mass is well to the left");
    assertEquals(share * total, uneven.get(0).wrench().fx(), 1e-6);
  }

  @Test
  void a_wall_that_cannot_meet_both_tips_is_refused() {
    Ladder ladder =
        Ladder.named("stagger")
            .level(mm(380))
            .rail(Side.LEFT, Rail.from(mm(450), mm(400)).to(mm(-2350), mm(400), Curlew.tube()))
            .rail(Side.RIGHT, Rail.from(mm(400), mm(-400)).to(mm(-2350), mm(-400), Curlew.tube()))
            .crossmember("front", mm(400), Curlew.tube())
            .build();
    message(
        "the rail tips of ladder stagger are at x 450.0 mm and 400.0 mm: a full-width wall meets"
            + " one of them alone; ask for that tip",
        () -> WALL.on(Curlew.vehicle(), ladder));
    Vehicle beside =
        Curlew.parts().mass("block", kg(6000), Curlew.at(-1000, 480, 380), "middle left").build();
    message(
        "the centre of mass lies beside the rail tips of ladder Curlew: a full-width wall cannot"
            + " stop it without yaw",
        () -> WALL.on(beside, Curlew.ladder()));
  }

  private static List<Wrench> forces(Event event) {
    return event.scene().on(Curlew.vehicle(), Curlew.ladder()).stream()
        .map(AppliedWrench::wrench)
        .toList();
  }

  private static void refused(String message, Event event) {
    message(message, () -> event.scene().on(Curlew.vehicle(), Curlew.ladder()));
  }

  private static void message(String message, org.junit.jupiter.api.function.Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }

  @Test
  void pothole_braking_changes_one_wheel_alone() {
    List<Wrench> standing = forces(Event.standing());
    List<Wrench> pothole = forces(Event.potholeBraking(Axle.FRONT, Side.RIGHT));
    double load = standing.get(1).fz();
    assertEquals(Wrench.force(-1.1 * load, 0, 2 * load), pothole.get(1));
    for (int other : List.of(0, 2, 3)) {
      assertEquals(standing.get(other), pothole.get(other));
    }
  }

  @Test
  void against_a_kerb_a_wheel_carries_its_axle_and_is_pushed_inwards() {
    List<Wrench> kerb = forces(Event.kerb(Axle.FRONT, Side.LEFT, 1.5));
    Vehicle vehicle = Curlew.vehicle();
    double axle = vehicle.axleLoads().get(Axle.FRONT);
    double rollOver = 1.3 / (2 * vehicle.centreOfMass().z());
    assertEquals(-1.5 * rollOver * axle, kerb.get(0).fy(), 1e-9);
    assertEquals(axle, kerb.get(0).fz(), 1e-9);
    assertEquals(Wrench.ZERO, kerb.get(1));
    assertEquals(
        "kerb factor 2.000 is outside 1.4 to 1.75 of roll-over",
        assertThrows(ModelException.class, () -> Event.kerb(Axle.FRONT, Side.LEFT, 2))
            .getMessage());
  }

  @Test
  void braking_in_a_turn_carries_the_weight_and_both_decelerations() {
    List<Wrench> both = forces(Event.brakingInTurn(Side.LEFT, g(0.5), g(0.6)));
    List<Wrench> braking = forces(Event.braking(g(0.6)));
    List<Wrench> turning = forces(Event.cornering(Side.LEFT, g(0.5)));
    List<Wrench> standing = forces(Event.standing());
    for (int i = 0; i < 4; i++) {
      double moved = braking.get(i).fz() + turning.get(i).fz() - standing.get(i).fz();
      assertEquals(moved, both.get(i).fz(), 1e-9);
    }
    assertEquals(620 * G, both.stream().mapToDouble(Wrench::fz).sum(), 1e-8);
    assertEquals(-0.6 * 620 * G, both.stream().mapToDouble(Wrench::fx).sum(), 1e-8);
    assertEquals(0.5 * 620 * G, both.stream().mapToDouble(Wrench::fy).sum(), 1e-8);
  }
}

package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.section.Section;
import rungwork.solve.AppliedWrench;
import rungwork.solve.Displacement;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.solve.RigidAcceleration;
import rungwork.solve.Solver;

class BalanceTest {
  private static final double G = 9.80665;

  /** What sums of a few hundred loads leave by rounding, over the loads [1]. */
  private static final double ROUNDING = 1e-11;

  static Stream<Event> events() {
    return Stream.of(
        Event.standing(),
        Event.bumpBothWheels(Axle.FRONT),
        Event.bumpBothWheels(Axle.REAR),
        Event.bumpOneWheel(Axle.FRONT, Side.LEFT),
        Event.bumpOneWheel(Axle.REAR, Side.RIGHT),
        Event.pureTwist(),
        Event.braking(g(1.1)),
        Event.cornering(Side.LEFT, g(0.8)),
        Event.cornering(Side.RIGHT, g(0.8)),
        Event.frontalImpact(g(20), Event.Hit.FULL_WIDTH),
        Event.frontalImpact(g(20), Event.Hit.LEFT_TIP),
        Event.frontalImpact(g(20), Event.Hit.RIGHT_TIP),
        Event.frontalImpact(g(20), Event.Hit.CENTRE));
  }

  @ParameterizedTest
  @MethodSource("events")
  void every_events_loads_sum_to_nothing_in_all_six(Event event) {
    Ladder ladder = Curlew.ladder();
    Vehicle lopsided =
        Curlew.parts()
            .mass("tool box", kg(40), Curlew.at(-400, 350, 500), "middle left", "front left")
            .build();
    for (Vehicle vehicle : List.of(Curlew.vehicle(), lopsided)) {
      Balance balance = Balance.of(event, vehicle.on(ladder), ladder);
      for (Sharing sharing : Sharing.values()) {
        LoadCase loads = balance.loadCase(sharing);
        Wrench sum = Sums.of(loads.loads(), ladder.frame(Joints.RIGID));
        assertTrue(Sums.largest(sum) < ROUNDING * total(loads), () -> event + " leaves " + sum);
      }
    }
  }

  @Test
  void standing_braking_and_cornering_are_steady() {
    assertAcceleration(Event.standing(), 0, 0, 1);
    assertAcceleration(Event.braking(g(1.1)), -1.1, 0, 1);
    assertAcceleration(Event.cornering(Side.LEFT, g(0.8)), 0, 0.8, 1);
    assertAcceleration(Event.cornering(Side.RIGHT, g(0.8)), 0, -0.8, 1);
    assertAcceleration(Event.pureTwist(), 0, 0, 0);
  }

  @Test
  void a_front_bump_lifts_and_pitches_the_nose_up() {
    RigidAcceleration answer = balance(Event.bumpBothWheels(Axle.FRONT)).acceleration();
    Vehicle vehicle = Curlew.vehicle().on(Curlew.ladder());
    double extra = 2 * vehicle.axleLoads().get(Axle.FRONT);
    assertEquals((vehicle.weight() + extra) / vehicle.massTotal(), answer.az(), 1e-9);
    double about = extra * vehicle.centreOfMass().x() / pitchInertia(vehicle);
    assertTrue(about < 0, "nose up is negative");
    assertEquals(about, answer.alphaY(), 1e-9);
  }

  @Test
  void a_hit_on_the_left_tip_turns_the_nose_to_the_left() {
    Ladder ladder = Curlew.ladder();
    Vehicle flat = Flat.vehicle().on(ladder);
    Event hit = Event.frontalImpact(g(20), Event.Hit.LEFT_TIP);
    RigidAcceleration answer = Balance.of(hit, flat, ladder).acceleration();
    Point centre = flat.centreOfMass();
    double force = flat.massTotal() * 20 * G;
    double byHand = force * (0.4 - centre.y()) / yawInertia(flat);
    assertTrue(byHand > 0, "nose to the left is positive");
    assertEquals(byHand, answer.alphaZ(), 1e-9);
    assertEquals(0, answer.alphaY(), 1e-9);
    Event other = Event.frontalImpact(g(20), Event.Hit.RIGHT_TIP);
    assertTrue(Balance.of(other, flat, ladder).acceleration().alphaZ() < 0);
  }

  @Test
  void a_seat_on_the_side_of_the_hit_is_stopped_harder() {
    Ladder ladder = Curlew.ladder();
    Vehicle flat = Flat.vehicle().on(ladder);
    Event hit = Event.frontalImpact(g(20), Event.Hit.LEFT_TIP);
    RigidAcceleration seat =
        Balance.of(hit, flat, ladder).acceleration().at(flat.seats().get(0).at());
    Point centre = flat.centreOfMass();
    double yaw = flat.massTotal() * 20 * G * (0.4 - centre.y()) / yawInertia(flat);
    assertEquals(-20 * G - yaw * (0.3 - centre.y()), seat.ax(), 1e-8);
    assertEquals(yaw * (-1.1 - centre.x()), seat.ay(), 1e-8);
    assertTrue(seat.ax() < -20 * G);
  }

  @Test
  void a_full_width_wall_stops_every_seat_alike() {
    Event wall = Event.frontalImpact(g(20), Event.Hit.FULL_WIDTH);
    Ladder ladder = Curlew.ladder();
    Balance balance = Balance.of(wall, Flat.vehicle().on(ladder), ladder);
    assertEquals(0, balance.acceleration().alphaZ(), 1e-9);
    SeatDeceleration seat = balance.atSeats().get(0);
    assertEquals("driver", seat.seat());
    assertEquals(20 * G, seat.rearwards(), 1e-8);
    assertEquals(20 * G, seat.magnitude(), 1e-8);
  }

  @Test
  void a_seat_says_its_deceleration_in_g() {
    assertEquals(
        "driver: 12.4 g rearwards, 15.0 g in all",
        new SeatDeceleration("driver", 12.4 * G, 15 * G).toString());
    assertEquals(
        "left person: 0 g rearwards, 1.00 g in all",
        balance(Event.standing()).atSeats().get(0).toString());
  }

  @Test
  void an_impact_comes_on_top_of_standing() {
    Event wall = Event.frontalImpact(g(20), Event.Hit.FULL_WIDTH);
    Response together = solve(balance(wall).loadCase(Sharing.ALL));
    Response standing = solve(balance(Event.standing()).loadCase(Sharing.ALL));
    Ladder ladder = Curlew.ladder();
    LoadCase both = balance(wall).loadCase(Sharing.ALL);
    List<Load> increment = new java.util.ArrayList<>(both.loads());
    balance(Event.standing()).loadCase(Sharing.ALL).loads().forEach(increment::remove);
    Response alone = solve(new LoadCase("increment", "test", List.of(), increment));
    String node = ladder.node("middle left").name();
    assertEquals(
        together.displacement(node).uz(),
        alone.displacement(node).uz() + standing.displacement(node).uz(),
        1e-12);
    assertTrue(Math.abs(standing.displacement(node).uz()) > 1e-5);
  }

  @Test
  void a_rail_is_compressed_by_all_that_lies_behind() {
    Ladder ladder = Curlew.ladder();
    Event wall = Event.frontalImpact(g(20), Event.Hit.FULL_WIDTH);
    Vehicle vehicle = Flat.centred();
    Balance balance = Balance.of(wall, vehicle.on(ladder), ladder);
    Response response =
        Solver.unsupported(ladder.frame(Joints.released("middle", Side.LEFT)))
            .solve(balance.loadCase(Sharing.ALL));
    double behind = 100 + 6e-4 * 7850 * (2 * (2.35 - 1.0) + 0.8);
    for (String rail : List.of("left rail", "right rail")) {
      String piece =
          ladder.frame(Joints.RIGID).beams().stream()
              .filter(beam -> beam.name().startsWith(rail))
              .filter(beam -> (beam.start() + beam.end()).contains("middle"))
              .map(Beam::name)
              .reduce((first, second) -> second)
              .orElseThrow();
      InternalForces atMiddle = response.forces(piece).at(rail.startsWith("left") ? 1 : 0);
      assertEquals(-behind * 20 * G / 2, atMiddle.n(), 1e-6, piece);
    }
  }

  @Test
  void a_share_goes_to_its_node_with_its_arm() {
    Ladder ladder = Curlew.ladder();
    Event lift =
        new Event(
            "pull",
            "test",
            List.of(),
            Event.Kind.DRIVING,
            (vehicle, on) ->
                List.of(
                    new AppliedWrench(
                        "rope",
                        Wrench.force(0, 700, 0),
                        on.at("rear left spring"),
                        List.of("rear left spring"))));
    Wrench atNode =
        balance(lift).loadCase(Sharing.ALL).loads().stream()
            .filter(Load.AtNode.class::isInstance)
            .map(Load.AtNode.class::cast)
            .filter(load -> load.node().equals(ladder.node("rear left spring").name()))
            .map(Load.AtNode::wrench)
            .filter(wrench -> wrench.fy() == 700)
            .findFirst()
            .orElseThrow();
    assertEquals(700 * 0.08, atNode.mx(), 1e-9);
    assertEquals(0, atNode.mz(), 1e-9);
  }

  @Test
  void a_bound_puts_a_mass_on_its_end_mounts_alone() {
    Ladder ladder = Curlew.ladder();
    Mass person = Curlew.vehicle().masses().get(3);
    assertEquals(
        List.of("seat left front", "seat left rear"), Sharing.ALL.carriers(person, ladder));
    assertEquals(List.of("seat left front"), Sharing.FOREMOST.carriers(person, ladder));
    assertEquals(List.of("seat left rear"), Sharing.REARMOST.carriers(person, ladder));
    Event wall = Event.frontalImpact(g(20), Event.Hit.FULL_WIDTH);
    assertEquals(
        "frontal impact, full width, 20 g, bound: masses on their foremost mounts",
        balance(wall).loadCase(Sharing.FOREMOST).name());
  }

  @ParameterizedTest
  @MethodSource("events")
  void a_symmetric_scene_moves_both_sides_alike(Event event) {
    boolean symmetric =
        Stream.of("standing", "both", "braking", "full width", "centre")
            .anyMatch(event.name()::contains);
    Ladder ladder = Curlew.ladder();
    Response response = solve(balance(event).loadCase(Sharing.ALL));
    for (String place : List.of("front", "middle", "rear")) {
      Displacement left = relative(response, ladder, place + " left");
      Displacement right = relative(response, ladder, place + " right");
      boolean alike = Math.abs(left.rx() + right.rx()) < 1e-12;
      assertEquals(symmetric, alike, event + " at " + place + ": " + left + ", " + right);
    }
  }

  @Test
  void channel_rails_stand_as_mirror_images() {
    Stock channel = new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), Curlew.STEEL);
    Ladder ladder = Curlew.ladder().withRails(channel);
    Event bump = Event.bumpBothWheels(Axle.FRONT);
    LoadCase loads = Balance.of(bump, Curlew.vehicle().on(ladder), ladder).loadCase(Sharing.ALL);
    Response response = Solver.unsupported(ladder.frame(Joints.RIGID)).solve(loads);
    double left = relative(response, ladder, "middle left").rx();
    double right = relative(response, ladder, "middle right").rx();
    assertTrue(Math.abs(left) > 1e-5, "the rails turn under their eccentric loads");
    assertEquals(left, -right, 1e-12);
  }

  @Test
  void every_joint_assumption_leaves_a_stable_frame() {
    LoadCase loads = balance(Event.bumpOneWheel(Axle.FRONT, Side.LEFT)).loadCase(Sharing.ALL);
    Ladder ladder = Curlew.ladder();
    for (Joints joints : ladder.joints()) {
      Response response = Solver.unsupported(ladder.frame(joints)).solve(loads);
      assertTrue(response.residual() <= 1e-9, joints::words);
    }
    assertEquals(9, ladder.joints().size());
  }

  @Test
  void an_event_without_reaction_is_refused() {
    Event nothing =
        new Event("float", "none", List.of(), Event.Kind.DRIVING, (vehicle, ladder) -> List.of());
    assertEquals(
        "event float has no reaction: nothing pushes on the vehicle",
        assertThrows(ModelException.class, () -> balance(nothing)).getMessage());
  }

  private static Displacement relative(Response response, Ladder ladder, String feature) {
    return response.displacement(ladder.node(feature).name());
  }

  private static Balance balance(Event event) {
    Ladder ladder = Curlew.ladder();
    return Balance.of(event, Curlew.vehicle().on(ladder), ladder);
  }

  private static Response solve(LoadCase loads) {
    return Solver.unsupported(Curlew.ladder().frame(Joints.RIGID)).solve(loads);
  }

  private static void assertAcceleration(Event event, double x, double y, double z) {
    RigidAcceleration answer = balance(event).acceleration();
    double[] expected = {x * G, y * G, z * G, 0, 0, 0};
    double[] found = {
      answer.ax(), answer.ay(), answer.az(), answer.alphaX(), answer.alphaY(), answer.alphaZ()
    };
    for (int i = 0; i < 6; i++) {
      assertEquals(expected[i], found[i], 1e-9, event + ": " + answer);
    }
  }

  private static double pitchInertia(Vehicle vehicle) {
    Point c = vehicle.centreOfMass();
    return vehicle.masses().stream()
        .mapToDouble(
            m ->
                m.own().yy()
                    + m.kilograms()
                        * (Math.pow(m.at().x() - c.x(), 2) + Math.pow(m.at().z() - c.z(), 2)))
        .sum();
  }

  private static double yawInertia(Vehicle vehicle) {
    Point c = vehicle.centreOfMass();
    return vehicle.masses().stream()
        .mapToDouble(
            m ->
                m.own().zz()
                    + m.kilograms()
                        * (Math.pow(m.at().x() - c.x(), 2) + Math.pow(m.at().y() - c.y(), 2)))
        .sum();
  }

  private static double total(LoadCase loads) {
    double total = 0;
    for (Load load : loads.loads()) {
      if (load instanceof Load.AtNode atNode) {
        total += Math.abs(atNode.wrench().fx()) + Math.abs(atNode.wrench().fz());
      }
    }
    return total;
  }
}

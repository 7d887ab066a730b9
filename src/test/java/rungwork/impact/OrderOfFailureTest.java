package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.check.DesignFactor;
import rungwork.check.LimitState;
import rungwork.check.MemberChecks;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Stock;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.joint.Factors;
import rungwork.material.RatedMaterial;
import rungwork.material.UnratedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Section;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.study.Curlew;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Balance;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;
import rungwork.vehicle.VehicleBuilder;

class OrderOfFailureTest {
  private static final double G = 9.80665;
  private static final OrderOfFailure STRAIGHT = full(raised(0));
  private static final OrderOfFailure CRANKED = full(raised(100));

  private static Ladder raised(double rise) {
    return Curlew.parts()
        .rails(mm(450), mm(-2350), mm(800), Curlew.tube(80, 40))
        .kickUp("front", mm(-100), mm(150), mm(rise))
        .build();
  }

  private static OrderOfFailure full(Ladder ladder) {
    return OrderOfFailure.of(Curlew.vehicle(), ladder, Event.Hit.FULL_WIDTH);
  }

  private static Part part(OrderOfFailure order, String name) {
    return order.parts().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private static Range first(OrderOfFailure order, String name) {
    return part(order, name).first().orElseThrow();
  }

  /** Both tips squash: a = 2·0.9·fy·A/m, the rails' short overhang bends next to nothing. */
  @Test
  void straight_tips_yield_when_their_area_does() {
    Vehicle vehicle = Curlew.vehicle().on(raised(0));
    double felt = vehicle.masses().stream().map(Mass::amplified).mapToDouble(Mass::kilograms).sum();
    double area = Curlew.tube(80, 40).section().properties().area();
    double squash = 2 * 0.9 * 235e6 * area / felt;
    assertEquals(squash, first(STRAIGHT, "rail, tip to front").low(), 0.02 * squash);
  }

  /** The checks of stress are the judge, in first order: at the low strength all of it is used. */
  @Test
  void low_first_yield_is_where_the_checks_of_weaker_steel_meet_yield() {
    String name = "rail, front to middle, part 3";
    assertEquals(MemberChecks.FIRST_YIELD, part(CRANKED, name).detail().begins());
    double low = first(CRANKED, name).low();
    Event hit = Event.frontalImpact(g(low / G), Event.Hit.FULL_WIDTH);
    Stock weaker = new Stock(Curlew.tube(80, 40).section(), weaker());
    Ladder ladder = raised(100).withRails(weaker);
    double use = 0;
    for (Joints joints : ladder.joints()) {
      Solver solver = Solver.unsupported(ladder.frame(joints));
      for (Balance.Growth loads : Balance.of(hit, Curlew.vehicle().on(ladder), ladder).growing()) {
        use = Math.max(use, stress(ladder, name, solver.solve(together(loads))));
      }
    }
    assertEquals(1, use, 1e-9);
  }

  private static LoadCase together(Balance.Growth loads) {
    List<Load> all = new ArrayList<>(loads.standing().loads());
    all.addAll(loads.impact().loads());
    return LoadCase.of("the hit while standing", all.toArray(Load[]::new));
  }

  private static double stress(Ladder ladder, String name, Response response) {
    return ladder.members().stream()
        .filter(member -> member.part().contains(name))
        .flatMap(member -> MemberChecks.of(member, response, DesignFactor.NONE).stream())
        .filter(check -> check.what().equals("combined stress"))
        .mapToDouble(check -> check.utilisation().orElseThrow())
        .max()
        .orElseThrow();
  }

  private static RatedMaterial weaker() {
    RatedMaterial.Strength full = Curlew.STEEL.strength();
    return new RatedMaterial(
        "S235, wall 10 % thin",
        Curlew.STEEL.elasticity(),
        new RatedMaterial.Strength(
            0.9 * full.yield(), full.ultimate(), 0.9 * full.weldedYield(), full.elongation()),
        Curlew.STEEL.source());
  }

  @Test
  void a_kick_up_brings_first_yield_forward() {
    double straight = first(STRAIGHT, "rail, front to middle").low();
    double cranked = first(CRANKED, "rail, front to middle, part 3").low();
    assertTrue(cranked < 0.7 * straight, cranked + " " + straight);
    assertTrue(CRANKED.elastic().firstYield().low() < 0.8 * STRAIGHT.elastic().firstYield().low());
    assertEquals(Zone.KICK_UP, part(CRANKED, "rail, front to middle, part 2 (kick-up)").zone());
  }

  @Test
  void the_deceleration_of_the_event_makes_no_difference() {
    OrderOfFailure other =
        OrderOfFailure.of(
            Curlew.vehicle(), raised(100), Event.frontalImpact(g(3), Event.Hit.FULL_WIDTH));
    Range expected = first(CRANKED, "rail, middle to rear");
    assertEquals(expected.low(), first(other, "rail, middle to rear").low(), 1e-6);
    assertEquals(expected.high(), first(other, "rail, middle to rear").high(), 1e-6);
    assertEquals(
        CRANKED.elastic().critical().orElseThrow().low(),
        other.elastic().critical().orElseThrow().low(),
        1e-6);
  }

  @Test
  void a_hit_on_the_other_side_is_the_mirror_image() {
    OrderOfFailure left = OrderOfFailure.of(Curlew.vehicle(), raised(100), Event.Hit.LEFT_TIP);
    OrderOfFailure right = OrderOfFailure.of(Curlew.vehicle(), raised(100), Event.Hit.RIGHT_TIP);
    for (Part one : left.order()) {
      Range other = first(right, one.name());
      assertEquals(one.first().orElseThrow().low(), other.low(), 1e-4 * other.low(), one.name());
    }
    assertEquals(left.elastic().yaw(), -right.elastic().yaw(), 1e-6);
    assertTrue(left.elastic().yaw() > 1);
  }

  /** Cowper and Symonds at 1/s: 1 + (1/40.4)^(1/5); 1.1 for the wall, 1.4 for the steel. */
  @Test
  void the_high_end_is_the_stronger_steel_at_its_rate() {
    double rate = 1 + Math.pow(1 / 40.4, 0.2);
    Range tip = first(STRAIGHT, "rail, tip to front");
    assertEquals(1.1 * 1.4 * rate / 0.9, tip.high() / tip.low(), 0.02);
  }

  @Test
  void ultimate_comes_after_first_yield_and_a_whole_frame_has_a_row() {
    for (Part one : CRANKED.order()) {
      one.ultimate()
          .ifPresent(range -> assertTrue(range.low() >= one.first().get().low(), one.name()));
    }
    Part whole = part(CRANKED, "frame buckling as a whole");
    double imperfect = whole.first().orElseThrow().low();
    double elastic = CRANKED.elastic().critical().orElseThrow().low();
    assertTrue(imperfect < elastic && imperfect > 0.4 * elastic, imperfect + " " + elastic);
    assertEquals(MemberChecks.COLUMN, whole.detail().begins());
  }

  @Test
  void parts_without_figures_stay_in_the_table_as_not_checked() {
    List<String> unknown =
        CRANKED.parts().stream().filter(one -> one.first().isEmpty()).map(Part::name).toList();
    assertEquals(
        List.of(
            "tyre and bumper",
            "crush element",
            "front mounts",
            "steering gear mounts",
            "motor mounts",
            "belt anchors"),
        unknown);
    assertTrue(CRANKED.notChecked().contains("belt anchors: no figures given"));
    assertEquals(
        5,
        CRANKED.without(Zone.CRUSH_ELEMENT).parts().stream()
            .filter(one -> one.first().isEmpty())
            .count());
    Part anchor =
        Part.named("driver's lap anchor", Zone.BELT_ANCHORS, mm(-1200))
            .yields(g(14), g(20), "a chain, invented")
            .breaks(g(25), g(36));
    OrderOfFailure more = CRANKED.with(anchor);
    assertTrue(more.parts().contains(anchor));
    assertTrue(more.parts().stream().noneMatch(one -> one.name().equals("belt anchors")));
    assertEquals(List.of("given: a chain, invented"), anchor.detail().notes());
  }

  @Test
  void rows_run_from_the_front_to_the_passengers_and_the_order_by_what_gives_way_first() {
    List<Part> parts = CRANKED.parts();
    for (int i = 1; i < parts.size(); i++) {
      assertTrue(parts.get(i).station() <= parts.get(i - 1).station());
    }
    List<Part> order = CRANKED.order();
    for (int i = 1; i < order.size(); i++) {
      assertTrue(order.get(i).first().get().low() >= order.get(i - 1).first().get().low());
    }
  }

  /** 100 kN at both tips: a = 200 kN/m; its mean force of a tenth of that is not what counts. */
  @Test
  void a_crush_element_counts_with_its_peak_and_never_with_its_mean() {
    CrushCurve peaked =
        CrushCurve.named("tube")
            .to(mm(5), kN(100), "peak")
            .to(mm(10), kN(10), "folds")
            .to(mm(200), kN(10), "used up")
            .to(mm(210), kN(900), "solid")
            .end();
    CrushElement tube =
        CrushElement.measured("tube", mm(60), kg(1)).between(peaked, peaked.times(1.2), "a test");
    Part row = part(CRANKED.behind(tube, 2), "tube");
    double felt =
        Curlew.vehicle().on(raised(100)).masses().stream()
            .map(Mass::amplified)
            .mapToDouble(Mass::kilograms)
            .sum();
    assertEquals(200e3 / felt, row.first().orElseThrow().low(), 1e-9);
    assertEquals(240e3 / felt, row.first().orElseThrow().high(), 1e-9);
    assertEquals(Optional.empty(), row.ultimate());
    assertEquals(
        "2 of them, with the peak of their force; the mean force is an average after folding has"
            + " begun and is not ranked",
        row.detail().notes().get(0));
  }

  @Test
  void capacity_design_asks_whether_the_front_gives_way_first() {
    CrushCurve weak =
        CrushCurve.named("weak tube")
            .to(mm(5), kN(5), "folds")
            .to(mm(200), kN(5), "used up")
            .to(mm(210), kN(900), "solid")
            .end();
    CrushElement tube =
        CrushElement.measured("weak tube", mm(60), kg(1)).between(weak, weak.times(1.1), "a test");
    OrderOfFailure.CapacityDesign bare = CRANKED.capacityDesign().orElseThrow();
    assertEquals("rail, tip to front", bare.front().name());
    assertEquals(RigidOrCrush.Order.DOES_NOT_HOLD, bare.order());
    OrderOfFailure.CapacityDesign fused = CRANKED.behind(tube, 2).capacityDesign().orElseThrow();
    assertEquals("weak tube", fused.front().name());
    assertEquals(RigidOrCrush.Order.HOLDS, fused.order());
    double least = CRANKED.elastic().firstYield().low();
    assertEquals(least / fused.front().first().get().high(), fused.ratio().low(), 1e-9);
  }

  /** From 1.6 on it holds by these figures; from 1.1 to 1.6 it is not shown. */
  @Test
  void a_ratio_of_1_1_to_1_6_is_not_shown_to_hold() {
    assertEquals(RigidOrCrush.Order.HOLDS, ratio(1.6, 3));
    assertEquals(RigidOrCrush.Order.NOT_SHOWN, ratio(1.59, 3));
    assertEquals(RigidOrCrush.Order.NOT_SHOWN, ratio(1.1, 1.6));
    assertEquals(RigidOrCrush.Order.NOT_SHOWN, ratio(0.5, 1.1));
    assertEquals(RigidOrCrush.Order.DOES_NOT_HOLD, ratio(0.5, 1.09));
    OrderOfFailure.CapacityDesign line =
        new OrderOfFailure.CapacityDesign(
            part(STRAIGHT, "rail, tip to front"),
            part(STRAIGHT, "rear crossmember"),
            new Range(Kind.RATIO, 1.1, 1.6));
    assertEquals(
        "strength of rear crossmember over that of rail, tip to front in front, low over high to"
            + " high over low: 1.10 to 1.60: not shown to hold",
        line.toString());
  }

  private static RigidOrCrush.Order ratio(double low, double high) {
    Part any = part(STRAIGHT, "rail, tip to front");
    return new OrderOfFailure.CapacityDesign(any, any, new Range(Kind.RATIO, low, high)).order();
  }

  @Test
  void two_parts_of_the_frame_are_compared_in_the_same_run() {
    Part tip = part(STRAIGHT, "rail, tip to front");
    Part rail = part(STRAIGHT, "rail, middle to rear");
    Range margin = STRAIGHT.margin(tip, rail);
    assertTrue(margin.low() >= rail.first().get().low() / tip.first().get().high() - 1e-12);
    assertTrue(margin.high() <= rail.first().get().high() / tip.first().get().low() + 1e-12);
    assertEquals(1 / margin.high(), STRAIGHT.margin(rail, tip).low(), 1e-9);
  }

  @Test
  void a_load_in_proportion_gives_a_deceleration() {
    Part mount =
        Part.named("rack mount", Zone.STEERING_GEAR, mm(120))
            .carries(kN(0.5), kN(6), kN(9), "a chain");
    assertEquals(12 * G, mount.first().orElseThrow().low(), 1e-9);
    assertEquals(18 * G, mount.first().orElseThrow().high(), 1e-9);
  }

  /** In proportion: found at 10 g or at half of it under half the load, it is the same. */
  @Test
  void the_chain_of_a_mount_gives_its_weakest_check_in_proportion() {
    Part mount = Part.named("lower arm, fore", Zone.FRONT_MOUNTS, mm(150));
    Part found = mount.from(HitMount.sheet(Factors.UNFACTORED, 5000), g(10));
    Part half = mount.from(HitMount.sheet(Factors.UNFACTORED, 2500), g(5));
    double use =
        HitMount.sheet(Factors.UNFACTORED, 5000).sheet().checks().stream()
            .filter(check -> check.basis().limitState() == LimitState.YIELD && check.made())
            .mapToDouble(check -> check.utilisation().orElseThrow())
            .max()
            .orElseThrow();
    assertEquals(10 * G / use, found.first().orElseThrow().low(), 1e-9);
    assertEquals(1.54, found.first().get().high() / found.first().get().low(), 1e-9);
    assertEquals(found.first().get().low(), half.first().orElseThrow().low(), 1e-6);
    assertTrue(found.ultimate().isPresent());
    assertTrue(found.detail().where().endsWith("of mount lower fore"), found.detail().where());
    assertEquals(Zone.FRONT_MOUNTS, found.zone());
  }

  @Test
  void a_chain_that_divides_by_factors_says_nothing_here() {
    Refused.with(
        "mount lower fore has no unfactored check on yield or rupture that was made; part lower arm"
            + " learns nothing from it",
        () ->
            Part.named("lower arm", Zone.FRONT_MOUNTS, mm(150))
                .from(HitMount.sheet(Factors.ROAD, 5000), g(10)));
    Refused.with(
        "deceleration of the chain's loads 0 g is not above zero",
        () ->
            Part.named("lower arm", Zone.FRONT_MOUNTS, mm(150))
                .from(HitMount.sheet(Factors.UNFACTORED, 5000), g(0)));
  }

  @Test
  void the_elastic_stage_tells_what_seats_see_and_how_the_vehicle_turns() {
    OrderOfFailure.Elastic elastic = STRAIGHT.elastic();
    assertEquals(0.38, elastic.forces().get(0).z(), 1e-12);
    assertTrue(elastic.centre().z() > 0.5);
    assertTrue(elastic.pitch() > 0, "nose down");
    assertEquals(2, elastic.seats().size());
    double low = elastic.firstYield().low();
    assertEquals(low, elastic.seats().get(0).rearwards(), 0.1 * low);
    assertEquals(0.48, CRANKED.elastic().forces().get(1).z(), 1e-12);
    assertTrue(CRANKED.elastic().notes().get(0).startsWith("The frame buckles at "));
  }

  @Test
  void a_frame_of_steel_that_nobody_guarantees_is_not_checked() {
    Ladder unrated =
        raised(0)
            .withCrossmember(
                "front",
                new Stock(
                    Curlew.tube(50, 50).section(),
                    new UnratedMaterial(
                        "found steel", Curlew.STEEL.elasticity(), Curlew.STEEL.source())));
    Part front = part(full(unrated), "front crossmember");
    assertEquals(Optional.empty(), front.first());
    assertEquals(List.of("found steel has no guaranteed yield strength"), front.detail().notes());
  }

  /** Both know the same surface: the first hinge is where the first section is fully plastic. */
  @Test
  void the_plastic_collapse_of_the_frame_is_a_row_among_the_others() {
    Collapse collapse = Collapse.of(Curlew.vehicle(), raised(0), Event.Hit.FULL_WIDTH);
    Refused.with(
        "the collapse of ladder Curlew, frontal impact, full width, has no place in the order of"
            + " ladder Curlew, frontal impact, full width",
        () -> CRANKED.with(collapse));
    OrderOfFailure order = full(collapse.ladder()).with(collapse);
    Part row = part(order, "frame by plastic hinges");
    assertEquals(collapse.deceleration(), row.ultimate().orElseThrow());
    double least =
        order.order().stream()
            .filter(one -> one.zone() == Zone.RAIL)
            .mapToDouble(one -> one.ultimate().orElseThrow().low())
            .min()
            .orElseThrow();
    assertEquals(least, row.first().orElseThrow().low(), 0.02 * least);
    assertTrue(order.toString().contains("rail, rear to tail over 1000 g"), order.toString());
    assertTrue(order.toString().startsWith("Order of failure, frontal impact, full width: "));
  }

  /** Whole frame of such steel: there is nothing to put in an order. */
  @Test
  void a_frame_of_which_nothing_is_known_is_refused() {
    Stock found =
        new Stock(
            Curlew.tube(60, 60).section(),
            new UnratedMaterial("found steel", Curlew.STEEL.elasticity(), Curlew.STEEL.source()));
    Ladder unknown =
        raised(0)
            .withRails(found)
            .withCrossmember("front", found)
            .withCrossmember("middle", found)
            .withCrossmember("rear", found);
    Refused.with(
        "no part of ladder Curlew could be checked: found steel has no guaranteed yield strength",
        () -> full(unknown));
  }

  /**
   * All mass stands at a stout crossmember; the rails ahead of it are two cantilevers whose tips a
   * thin rung holds against turning with k = 6·E·I/B, so that u·cos u + k·L/(E·Iz)·sin u = 0 and
   * Ncr = E·Iz·(u/L)² each. The crossmember gives way a little, and the rails weigh something.
   */
  @Test
  void straight_rails_buckle_as_two_cantilevers_ahead_of_the_mass() {
    Ladder ladder =
        Ladder.named("two cantilevers")
            .level(mm(380))
            .rails(mm(450), mm(-1100), mm(800), Curlew.tube(80, 40))
            .crossmember("front", mm(440), Curlew.tube(12, 12))
            .crossmember("middle", mm(-1000), Curlew.tube(120, 120))
            .build();
    VehicleBuilder parts =
        Vehicle.named("block").wheelbase(mm(2200)).track(mm(1300), mm(1300)).frontRollShare(0.5);
    parts.mass("block", kg(1000), Curlew.at(-1000, 0, 380), "middle left", "middle right");
    for (Side side : Side.values()) {
      parts
          .wheel(Axle.FRONT, side, "front " + side.word())
          .wheel(Axle.REAR, side, "middle " + side.word());
    }
    OrderOfFailure order = OrderOfFailure.of(parts.build(), ladder, Event.Hit.FULL_WIDTH);
    double second = Curlew.tube(80, 40).section().properties().iz();
    double spring = 6 * Curlew.tube(12, 12).section().properties().iz() / 0.8 * 1.45 / second;
    double wave = Math.PI / 2;
    while (wave * Math.cos(wave) + spring * Math.sin(wave) > 0) {
      wave += 1e-4;
    }
    double each = 210e9 * second * wave * wave / (1.45 * 1.45);
    double expected = 2 * each / (1000 + ladder.mass());
    assertEquals(expected, order.elastic().critical().orElseThrow().high(), 0.04 * expected);
  }

  /** An open section is run free to warp, held at one end and at both; the worst counts. */
  @Test
  void channel_rails_are_run_for_every_way_of_warping_and_their_buckling_is_not_checked() {
    Stock channel = new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), Curlew.STEEL);
    OrderOfFailure order = full(raised(0).withRails(channel));
    Part rail = part(order, "rail, middle to rear");
    assertTrue(rail.first().isPresent());
    assertEquals(List.of(), rail.detail().notes());
    Part whole = part(order, "frame buckling as a whole");
    assertEquals(Optional.empty(), whole.first());
    assertTrue(
        whole.detail().notes().get(0).contains("its warping stiffness, which may be most of what"),
        whole.detail().notes().toString());
    assertEquals(Optional.empty(), order.elastic().critical());
  }

  @Test
  void bad_input_is_refused() {
    Part once = Part.named("anchor", Zone.BELT_ANCHORS, mm(-1200));
    Refused.with("two parts are named anchor; rename one", () -> CRANKED.with(once).with(once));
    Refused.with(
        "two parts are named rear crossmember; rename one",
        () -> CRANKED.with(Part.named("rear crossmember", Zone.RAIL, mm(0))));
    Refused.with("a part has no name; give it one", () -> Part.named("", Zone.RAIL, mm(0)));
    Refused.with(
        "part anchor carries no more at 9.00 to 12.0 g, before it first gives way at 10.0 to 14.0"
            + " g; look at both figures again",
        () -> once.yields(g(10), g(14), "guess").breaks(g(9), g(12)));
    Refused.with(
        "load of anchor at 1 g 0 kN is not above zero",
        () -> once.carries(kN(0), kN(1), kN(2), "guess"));
    Refused.with(
        "part anchor is not checked; it has no margin",
        () -> CRANKED.margin(once, part(CRANKED, "rear crossmember")));
    Refused.with(
        "event standing, 1 g is no impact; only an impact grows on top of standing",
        () -> OrderOfFailure.of(Curlew.vehicle(), raised(0), Event.standing()));
    CrushCurve curve =
        CrushCurve.named("c").to(mm(5), kN(5), "used up").to(mm(9), kN(900), "solid").end();
    CrushElement tube = CrushElement.measured("tube", mm(60), kg(1)).between(curve, curve, "test");
    Refused.with(
        "3 crush elements tube are met; the rails have room for 1 or 2",
        () -> CRANKED.behind(tube, 3));
  }
}

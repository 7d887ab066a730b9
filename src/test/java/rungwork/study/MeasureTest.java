package rungwork.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;
import static rungwork.quantity.Quantities.ms;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import rungwork.check.Check;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.impact.Collapse;
import rungwork.impact.Occupant;
import rungwork.impact.OrderOfFailure;
import rungwork.impact.Pulse;
import rungwork.impact.Ride;
import rungwork.impact.Runabout;
import rungwork.joint.Bolt;
import rungwork.joint.Factors;
import rungwork.joint.Parts;
import rungwork.joint.Pivot;
import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.ChainSheet;
import rungwork.loadpath.Face;
import rungwork.loadpath.MountChain;
import rungwork.loadpath.MountForce;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.study.Survey.Variant;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.LadderBuilder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Side;

/** Variants by mount, weld throat, bolt, load case, speed and price. */
class MeasureTest {
  private static final Mount ARM = new Mount("lower arm", "left rail", Curlew.at(150, 370, 170));
  private static final Measure<ChainSheet> CHAIN = Measure.chain();

  /** A tab on a tube: its fillets' legs, its bolt and the force on the arm. */
  private static ChainSheet chain(Quantity<Length> leg, String bolt, double force) {
    Tab tab =
        new Tab(
            "tab",
            Parts.S355,
            Tab.Plate.single(mm(5), mm(40), mm(35)),
            Tab.Eye.of(Bolt.of(bolt, "8.8"), mm(12.5), mm(18)));
    WeldGroup weld =
        new WeldGroup(
            "weld",
            WeldGroup.Run.bothSides(mm(40), mm(5)),
            WeldGroup.Seam.fillet(leg, MPa(490)),
            WeldGroup.Parent.of(Parts.S355, mm(3)));
    Pivot pivot = new Pivot("bolt", tab, Bolt.Threads.IN_PLANE, Pivot.Stack.of(mm(1), mm(20)));
    Face face = new Face(ARM.at(), Face.Direction.UP, Face.Direction.LEFT);
    MountForce pull = new MountForce(ARM, "pull", Wrench.force(-force, 0, force / 2));
    return new MountChain("lower arm", face, List.of(pivot, tab, weld))
        .under(List.of(pull), Factors.ROAD, List.of());
  }

  @Test
  void a_chain_is_surveyed_by_weld_bolt_and_load() {
    List<Variant<ChainSheet>> variants =
        List.of(
            new Variant<>("2.5 mm, M10, 3 kN", () -> chain(mm(2.5), "M10", 3000)),
            new Variant<>("3 mm, M10, 3 kN", () -> chain(mm(3), "M10", 3000)),
            new Variant<>("2.5 mm, M12, 3 kN", () -> chain(mm(2.5), "M12", 3000)),
            new Variant<>("2.5 mm, M10, 6 kN", () -> chain(mm(2.5), "M10", 6000)));
    Survey survey = Survey.of("lower arm", variants, List.of(CHAIN));
    double[] found = survey.values("utilisation of the chain");
    for (int i = 0; i < found.length; i++) {
      double largest =
          variants.get(i).made().get().ranked().values().stream()
              .flatMap(List::stream)
              .mapToDouble(check -> check.utilisation().orElseThrow())
              .max()
              .orElseThrow();
      assertEquals(largest, found[i]);
    }
    assertTrue(found[3] > 1.9 * found[0]);
    assertTrue(found[1] <= found[0] && found[2] <= found[0]);
    Check worst =
        variants.get(0).made().get().sheet().checks().stream()
            .filter(check -> check.utilisation().orElse(0) == found[0])
            .findFirst()
            .orElseThrow();
    String words = survey.words("utilisation of the chain").get(0);
    assertTrue(words.startsWith(worst.what() + " of " + worst.part() + ", pull ("), words);
  }

  @Test
  void the_throat_matters_through_a_setting() {
    Study<ChainSheet> study =
        Study.of(
            "weld",
            List.of(
                Input.of("leg", mm(2.5)).within(0.1, Input.ASSUMED),
                Input.of("pull", 3000.0).within(0.1, Input.ASSUMED)),
            setting -> chain(setting.length("leg"), "M10", setting.number("pull")),
            List.of(CHAIN));
    assertTrue(study.sensitivity().toString().contains("pull"), study.sensitivity().toString());
  }

  /** The rear mounts of the seats at a station, all else as it is. */
  private static Ladder seatsAt(double x) {
    LadderBuilder ladder =
        Ladder.named("Curlew")
            .level(mm(380))
            .rails(mm(450), mm(-2350), mm(800), Curlew.tube(80, 40))
            .crossmember("front", mm(400), Curlew.tube(60, 60))
            .crossmember("middle", mm(-1000), Curlew.tube(50, 50))
            .crossmember("rear", mm(-2300), Curlew.tube(50, 50));
    for (Mount mount : Curlew.ladder().mounts()) {
      boolean moves = mount.name().endsWith(" rear");
      Point at = mount.at();
      Side side = mount.name().contains("left") ? Side.LEFT : Side.RIGHT;
      if (mount.name().equals("battery tray")) {
        ladder.mountOn("middle", mount.name(), at);
      } else {
        ladder.mount(
            mount.name(), side, moves ? Point.at(mm(x), mm(1e3 * at.y()), mm(1e3 * at.z())) : at);
      }
    }
    return ladder.build();
  }

  /** The wider apart a seat's mounts, the less its load bends the rail between them. */
  @Test
  void a_frame_is_surveyed_by_where_a_mount_sits() {
    List<Variant<Assessment>> variants = new ArrayList<>();
    for (double x : new double[] {-1250, -1600, -2000, -2500}) {
      variants.add(
          new Variant<>(
              "seats at %.0f mm".formatted(x),
              () ->
                  Assessment.of(
                      Curlew.vehicle(), seatsAt(x), List.of(Event.bumpBothWheels(Axle.REAR)))));
    }
    Survey survey = Survey.of("seats", variants, List.of(Measure.utilisation()));
    double[] found = survey.values("utilisation");
    for (int i = 0; i < 3; i++) {
      double alone =
          variants
              .get(i)
              .made()
              .get()
              .sheet()
              .governing()
              .orElseThrow()
              .utilisation()
              .orElseThrow();
      assertEquals(alone, found[i]);
    }
    assertTrue(found[0] > found[1] && found[1] > found[2], Arrays.toString(found));
    assertTrue(Double.isNaN(found[3]));
    assertEquals(
        "mount seat left rear sits at x -2500 mm, behind the rails, which run from 450.0 mm to"
            + " -2350 mm",
        survey.refusals().get(3));
  }

  @Test
  void a_person_is_surveyed_by_speed() {
    Pulse pulse = Pulse.halfSine(g(20), ms(90));
    Occupant driver =
        Occupant.of(
            "driver", kg(80), Occupant.Belt.between(Npmm(40), Npmm(100)).slack(mm(10), mm(50)));
    List<Variant<Ride>> rides = new ArrayList<>();
    for (int speed : List.of(20, 30, 40)) {
      rides.add(new Variant<>(speed + " km/h", () -> driver.in(kmh(speed), pulse)));
    }
    Measure<Ride> peak = Measure.occupantPeak();
    Survey survey = Survey.of("speed", rides, List.of(peak));
    for (int i = 0; i < 3; i++) {
      Ride ride = rides.get(i).made().get();
      assertEquals(ride.peak().high(), survey.values(peak.name())[i]);
      assertEquals(ride.peak().toString(), survey.words(peak.name()).get(i));
    }
    assertEquals(Kind.ACCELERATION, survey.kind(peak.name()));
  }

  @Test
  void a_frame_is_surveyed_by_first_yield_and_collapse() {
    record Front(OrderOfFailure order, Collapse collapse) {}
    Variant<Front> front =
        new Variant<>(
            "S355",
            () ->
                new Front(
                    OrderOfFailure.of(
                        Runabout.vehicle(),
                        Runabout.ladder(Runabout.steel(355e6)),
                        Event.Hit.FULL_WIDTH),
                    Collapse.of(
                        Runabout.vehicle(),
                        Runabout.ladder(Runabout.steel(355e6)),
                        Event.Hit.FULL_WIDTH)));
    Survey survey =
        Survey.of(
            "front",
            List.of(front),
            List.of(Measure.firstYield().of(Front::order), Measure.collapse().of(Front::collapse)));
    Front made = front.made().get();
    double yield = survey.values("deceleration at first yield")[0];
    double collapse = survey.values("deceleration at collapse")[0];
    assertEquals(made.order().elastic().firstYield().low(), yield);
    assertEquals(made.collapse().deceleration().low(), collapse);
    assertTrue(yield < collapse);
    String words = survey.words("deceleration at collapse").get(0);
    assertEquals(
        "up to "
            + Units.METRIC.show(Kind.ACCELERATION, made.collapse().deceleration().high())
            + " with high strength",
        words);
  }

  @Test
  void members_cost_what_their_metres_do() {
    Assessment assessment =
        Assessment.of(Curlew.vehicle(), Curlew.ladder(), Curlew.events().subList(0, 1));
    Measure<Assessment> cost =
        Measure.cost("crowns", stock -> stock.section().name().contains("80x40") ? 100 : 40);
    var frame = assessment.ladder().frame(Joints.RIGID);
    double rails = 2 * 2.8;
    double all = frame.beams().stream().mapToDouble(frame::length).sum();
    assertEquals(100 * rails + 40 * (all - rails), cost.of().applyAsDouble(assessment), 1e-6);
    assertEquals("crowns", cost.unit());
  }
}

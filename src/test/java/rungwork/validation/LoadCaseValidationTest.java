package rungwork.validation;

import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.DesignFactor;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.Source;
import rungwork.material.UnratedMaterial;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.solve.AppliedWrench;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/** The load on each wheel, and the stiffness of a ladder bay, by hand. */
class LoadCaseValidationTest {
  private static final double G = 9.80665;
  private static final Published EQUAL_AXLES =
      Published.identity(
          "statics of a rigid vehicle, g 9.80665 m/s²",
          "350 kg an axle, wheelbase 2.2 m, centre of mass 0.45 m high, track 1.3 m");

  @Test
  void standing_and_bump_of_a_front_wheel() {
    EQUAL_AXLES
        .value("static front wheel", "N", "1716", wheel(Event.standing()).fz())
        .value(
            "front wheel in a 3 g bump", "N", "5148", wheel(Event.bumpBothWheels(Axle.FRONT)).fz());
  }

  @Test
  void braking_of_a_front_wheel() {
    Wrench standing = wheel(Event.standing());
    Wrench braking = wheel(Event.braking(g(1.1)));
    EQUAL_AXLES
        .value("load moved forward at 1.1 g", "N", "1544.5", 2 * (braking.fz() - standing.fz()))
        .value("vertical front wheel at 1.1 g", "N", "2488.4", braking.fz())
        .value("longitudinal front wheel at 1.1 g", "N", "2737.3", -braking.fx());
  }

  @Test
  void cornering_over_both_axles() {
    Event cornering = Event.cornering(Side.LEFT, g(1));
    List<AppliedWrench> turn = cornering.scene().on(equalAxles(), plainLadder());
    List<AppliedWrench> standing = Event.standing().scene().on(equalAxles(), plainLadder());
    double moved = 0;
    for (int i = 1; i < 4; i += 2) {
      moved += turn.get(i).wrench().fz() - standing.get(i).wrench().fz();
    }
    EQUAL_AXLES
        .value("load moved across at 1 g", "N", "2376.2", moved)
        .value("roll-over", "g", "1.444", equalAxles().corneringLimit() / G);
  }

  @Test
  void twist_that_lifts_the_lighter_axles_wheel() {
    Vehicle vehicle = vehicle(350, 300);
    List<AppliedWrench> twist = Event.pureTwist().scene().on(vehicle, plainLadder());
    double couple = (twist.get(0).wrench().fz() - twist.get(1).wrench().fz()) * 0.65;
    List<AppliedWrench> bump =
        Event.bumpOneWheel(Axle.FRONT, Side.LEFT).scene().on(vehicle, plainLadder());
    double factored = (bump.get(0).wrench().fz() - bump.get(1).wrench().fz()) * 0.65;
    Published.identity(
            "couple = lighter axle load / 2 × track (Brown, Robertson & Serpento 2002, 2.4-2.5),"
                + " g 9.80665 m/s²",
            "lighter axle 300 kg, track 1.3 m")
        .value("twist couple", "N·m", "1912.3", couple)
        .value("twist couple × 1.3", "N·m", "2486", factored);
  }

  @Test
  void stress_left_for_standing_under_a_factored_bump() {
    double bump = wheel(Event.bumpBothWheels(Axle.FRONT)).fz() / wheel(Event.standing()).fz();
    Published.identity("1 / (3 × 1.5)", "3 g bump with design factor 1.5")
        .value("1 g stress over yield", "", "0.222", 1 / (bump * DesignFactor.ROAD.value()));
  }

  @Test
  void a_rectangular_ladder_bay_in_pure_twist() {
    double length = 2.0;
    double width = 0.8;
    double rail = length / (2 * 81e9 * 2e-6) + width / (6 * 210e9 * 1e-6);
    double cross = width / (2 * 81e9 * 1e-9) + length / (6 * 210e9 * 1e-6);
    double p = 2 / width;
    double q = 2 / length;
    double lift = 4 / (p * p / rail + q * q / cross);
    double stiffness =
        Assessment.of(equalAxles(), bay(), List.of(Event.standing()))
            .torsionalStiffness(Joints.RIGID);
    Published.derived(
            "least strain energy over the torques of rails and crossmembers",
            "ladder bay 2.0 × 0.8 m, I 1e-6 m⁴, J 2e-6 and 1e-9 m⁴, E 210, G 81 GPa")
        .value("corner lift under 1 N", "m", "4.356006e-6", width * width / stiffness)
        .allowing(1e-9, "both sides in double precision")
        .value("K", "N·m/rad", Double.toString(width * width / lift), stiffness);
  }

  private static Wrench wheel(Event event) {
    return event.scene().on(equalAxles(), plainLadder()).get(0).wrench();
  }

  private static Vehicle equalAxles() {
    return vehicle(350, 350);
  }

  private static Vehicle vehicle(double front, double rear) {
    return Vehicle.named("worked example")
        .wheelbase(mm(2200))
        .track(mm(1300), mm(1300))
        .frontRollShare(0.5)
        .mass("front", kg(front), Point.at(mm(0), mm(0), mm(450)), "front middle")
        .mass("rear", kg(rear), Point.at(mm(-2200), mm(0), mm(450)), "rear middle")
        .wheel(Axle.FRONT, Side.LEFT, "front left")
        .wheel(Axle.FRONT, Side.RIGHT, "front right")
        .wheel(Axle.REAR, Side.LEFT, "rear left")
        .wheel(Axle.REAR, Side.RIGHT, "rear right")
        .build();
  }

  private static Ladder plainLadder() {
    Stock stock = stock("bar", 2e-6);
    return ladder(-2200, stock, stock);
  }

  private static Ladder bay() {
    return ladder(-2000, stock("rail", 2e-6), stock("crossmember", 1e-9));
  }

  private static Ladder ladder(double rear, Stock rails, Stock crossmembers) {
    return Ladder.named("bay")
        .level(mm(400))
        .rails(mm(0), mm(rear), mm(800), rails)
        .crossmember("front", mm(0), crossmembers)
        .crossmember("rear", mm(rear), crossmembers)
        .build();
  }

  private static Stock stock(String name, double torsion) {
    Properties p =
        new Properties(
            1e-3, 1e-6, 1e-6, 0, torsion, 0, 0, 1, 1e-5, 1e-5, 1e-5, 1e-5, 5e-4, 5e-4, 0, 0);
    Elasticity elasticity = new Elasticity(210e9, 210.0 / (2 * 81) - 1, 7850);
    return new Stock(
        new Section(name, p, List.of(), List.of()),
        new UnratedMaterial("steel", elasticity, new Source("example", Source.Tag.STATED_BY_USER)));
  }
}

package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.solve.Displacement;
import rungwork.solve.Vibration;

class LadderModesTest {
  private static final Ladder LADDER = Curlew.ladder();
  private static final Vehicle VEHICLE = Curlew.vehicle();

  private static LadderModes modes(Ladder ladder, Vehicle vehicle) {
    return new LadderModes(vehicle.on(ladder), ladder, Joints.RIGID);
  }

  private static double up(Vibration.Mode mode, String feature) {
    Displacement there = mode.shape(LADDER.node(feature).name());
    return there.uz();
  }

  @Test
  void in_the_first_twist_front_and_rear_turn_against_each_other() {
    Vibration.Mode twist = modes(LADDER, VEHICLE).twist().orElseThrow();
    double front = up(twist, "front left") - up(twist, "front right");
    double rear = up(twist, "rear left") - up(twist, "rear right");
    assertTrue(front * rear < 0, twist.toString());
    assertEquals(0, up(twist, "front left") + up(twist, "front right"), 1e-6);
  }

  @Test
  void in_the_first_bending_the_ends_rise_while_the_middle_sinks() {
    Vibration.Mode bending = modes(LADDER, VEHICLE).bending().orElseThrow();
    assertEquals(up(bending, "front left"), up(bending, "front right"), 1e-6);
    assertTrue(up(bending, "front left") * up(bending, "rear left") > 0, bending.toString());
    assertTrue(up(bending, "front left") * up(bending, "middle left") < 0, bending.toString());
  }

  @Test
  void more_mass_slows_the_bending_and_heavier_rails_quicken_it() {
    double bare = modes(LADDER, VEHICLE).bending().orElseThrow().frequency();
    double heavier =
        modes(
                LADDER,
                Curlew.parts()
                    .mass(
                        "ballast",
                        kg(200),
                        VEHICLE.centreOfMass(),
                        "front left",
                        "front right",
                        "rear left",
                        "rear right")
                    .build())
            .bending()
            .orElseThrow()
            .frequency();
    double stiffer =
        modes(LADDER.withRails(Curlew.heavyTube()), VEHICLE).bending().orElseThrow().frequency();
    assertTrue(heavier < bare, heavier + " against " + bare);
    assertTrue(stiffer > bare, stiffer + " against " + bare);
  }

  @Test
  void an_assessment_tells_both() {
    Assessment all =
        Assessment.of(VEHICLE, LADDER, List.of(Event.frontalImpact(g(5), Event.Hit.FULL_WIDTH)));
    assertEquals(
        modes(LADDER, VEHICLE).twist().orElseThrow().toString(),
        all.firstTwist(Joints.RIGID).orElseThrow().toString());
    assertEquals(
        modes(LADDER, VEHICLE).bending().orElseThrow().toString(),
        all.firstBending(Joints.RIGID).orElseThrow().toString());
  }
}

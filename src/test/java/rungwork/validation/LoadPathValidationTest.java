package rungwork.validation;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Wrench;
import rungwork.loadpath.Anchorages;
import rungwork.loadpath.Anchorages.Pull;
import rungwork.loadpath.Belts;
import rungwork.loadpath.CornerForces;
import rungwork.loadpath.Corners;

/** Corners whose members stand along the axes, so that moments about one line give each force. */
class LoadPathValidationTest {
  private static final Published BY_HAND =
      Published.derived("moments about one line at a time, by hand", "two arms 200 mm apart");

  @Test
  void a_bump_on_two_arms() {
    CornerForces forces = Corners.twoArms().under("bump", Wrench.force(0, 0, 3000));
    BY_HAND
        .value(
            "spring at 60 % of the arm / wheel force", "", "1.667", -forces.along("spring") / 3000)
        .value(
            "force on each lower pivot, up",
            "N",
            "-1000",
            forces.on("lower aft").get(0).wrench().fz())
        .value("bending of the arm at its spring", "N·m", "240.0", forces.bending("lower arm"));
  }

  @Test
  void braking_on_two_arms() {
    CornerForces forces = Corners.twoArms().under("braking", Wrench.force(-2000, 0, 0));
    BY_HAND
        .value(
            "thrust of the lower arm, brake in the wheel",
            "N",
            "-3700",
            forces.on("lower fore").get(1).wrench().fx())
        .value(
            "thrust of the upper arm, brake in the wheel",
            "N",
            "1700",
            forces.on("upper fore").get(1).wrench().fx())
        .value(
            "side force on the lower fore pivot",
            "N",
            "2466.7",
            forces.on("lower fore").get(0).wrench().fy());
    CornerForces inboard =
        Corners.twoArms(Corners.inboard(), 0.6).under("braking", Wrench.force(-2000, 0, 0));
    BY_HAND.value(
        "thrust of either arm, brake inboard",
        "N",
        "-1000",
        inboard.on("upper aft").get(1).wrench().fx());
  }

  @Test
  void a_strut_in_a_bend() {
    CornerForces forces = Corners.strut().under("cornering", Wrench.force(0, 1000, 0));
    Published.derived("moments about one line at a time, by hand", "strut 600 mm over its arm")
        .value(
            "side force on the strut's top",
            "N",
            "-283.3",
            forces.on("strut top").get(0).wrench().fy())
        .value(
            "side force on each lower pivot",
            "N",
            "641.7",
            forces.on("lower aft").get(0).wrench().fy());
  }

  @Test
  void a_bump_on_a_trailing_arm() {
    CornerForces forces = Corners.trailingArm().under("bump", Wrench.force(0, 0, 3000));
    Published.derived("moments about one line at a time, by hand", "trailing arm of 400 mm")
        .value(
            "spring 100 mm ahead of the wheel / wheel force",
            "",
            "1.333",
            -forces.along("spring") / 3000)
        .value(
            "force on the outer pivot, up",
            "N",
            "-1500",
            forces.on("outer pivot").get(0).wrench().fz())
        .value(
            "force on the inner pivot, up",
            "N",
            "500",
            forces.on("inner pivot").get(0).wrench().fz());
  }

  @Test
  void test_loads_on_belt_and_seat_anchorages() {
    Published.read("49 CFR 571.210, S4.2.1 and S4.2.2", "test loads on belts")
        .value("lap belt alone", "N", "22241", Pull.CFR_571.person().onLapAlone())
        .value("lap belt of two", "N", "13345", Pull.CFR_571.person().hips())
        .value("shoulder belt", "N", "13345", Pull.CFR_571.person().torso());
    Anchorages lap = new Anchorages(List.of(Belts.lapOnly("driver", 500)));
    Published hand =
        Published.derived("equilibrium of the person, by hand", "lap belt at 45 degrees");
    hand.value(
            "lift on an anchorage, 5000 lb",
            "kN",
            "11.12",
            lap.on("driver outer lap", Pull.CFR_571).wrench().fz() / 1e3)
        .value(
            "tension of the belt, 5000 lb",
            "kN",
            "15.73",
            Belts.lapOnly("driver", 500).lap().tension(22241.1) / 1e3);
    Anchorages three = new Anchorages(List.of(Belts.threePoints("driver", 500)));
    // The loop holds the torso level; the diagonal leads back by 0.6 of its tension.
    Published.derived("equilibrium of the person, by hand", "shoulder belt over a loop")
        .value(
            "tension of the shoulder belt, UN R14",
            "kN",
            "8.4375",
            Belts.threePoints("driver", 500).shoulder().orElseThrow().tension(13.5))
        .value(
            "forward pull on the loop",
            "kN",
            "8.4375",
            three.on("driver loop", Pull.UN_R14).wrench().fx() / 1e3)
        .value(
            "downward pull on the loop",
            "kN",
            "-8.4375",
            three.on("driver loop", Pull.UN_R14).wrench().fz() / 1e3)
        .value(
            "lift on the shared buckle's anchorage",
            "kN",
            "13.5",
            three.on("driver inner lap", Pull.UN_R14).wrench().fz() / 1e3);
    Published.derived("moments about one mount at a time, by hand", "seat of 12 kg at 20 g")
        .value(
            "forward force on each of two mounts",
            "N",
            "1176.8",
            lap.on("driver seat rear", Pull.CFR_571).wrench().fx())
        .value(
            "lift of the rear mount, 270 mm below",
            "N",
            "1588.7",
            lap.on("driver seat rear", Pull.CFR_571).wrench().fz());
  }
}

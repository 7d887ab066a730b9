package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;

class TwistRigTest {
  @Test
  void the_rig_stands_at_the_mounts_nearest_to_the_axles() {
    TwistRig rig = TwistRig.of(Curlew.vehicle(), Curlew.ladder());
    assertEquals("front left arm ahead", rig.frontLeft());
    assertEquals("rear right spring", rig.rearRight());
  }

  @Test
  void letting_joints_go_never_stiffens_the_frame() {
    Ladder ladder = Curlew.ladder();
    TwistRig rig = TwistRig.of(Curlew.vehicle(), ladder);
    double rigid = rig.stiffness(Joints.RIGID);
    for (Joints joints : ladder.joints().subList(1, 9)) {
      double released = rig.stiffness(joints);
      assertTrue(released > 0 && released < rigid, joints + ": " + released + " of " + rigid);
    }
  }

  @Test
  void a_stiffer_crossmember_stiffens_the_frame() {
    Ladder heavy = Curlew.ladder().withCrossmember("front", Curlew.heavyTube());
    double more = TwistRig.of(Curlew.vehicle(), heavy).stiffness(Joints.RIGID);
    assertTrue(more > TwistRig.of(Curlew.vehicle(), Curlew.ladder()).stiffness(Joints.RIGID));
  }

  @Test
  void the_same_twist_measured_from_the_rear_is_as_stiff() {
    Ladder ladder = Curlew.ladder();
    double front =
        new TwistRig(ladder, "front left", "front right", "rear left", "rear right")
            .stiffness(Joints.RIGID);
    double rear =
        new TwistRig(ladder, "rear left", "rear right", "front left", "front right")
            .stiffness(Joints.RIGID);
    assertEquals(1, rear / front, 1e-9);
  }

  @Test
  void a_rig_without_spacing_is_refused() {
    assertEquals(
        "the twist test needs a left and a right place at each end; front right is not to the left"
            + " of front left",
        assertThrows(
                ModelException.class,
                () ->
                    new TwistRig(
                        Curlew.ladder(), "front right", "front left", "rear left", "rear right"))
            .getMessage());
  }
}

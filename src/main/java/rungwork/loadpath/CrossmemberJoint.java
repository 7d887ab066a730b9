package rungwork.loadpath;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.section.Properties;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Side;

/**
 * The end of a crossmember on a rail: all six forces at its end, as what the crossmember does to
 * the rail. A crossmember's beams run from left to right, +y forward and +z up, so that its x is
 * the vehicle's −y. At its left end the crossmember is the part beyond the cut, at its right end
 * the part before it.
 *
 * @param ladder the ladder
 * @param crossmember one of its crossmembers
 * @param side the rail's side
 */
record CrossmemberJoint(Ladder ladder, Crossmember crossmember, Side side) {
  static CrossmemberJoint of(Ladder ladder, String crossmember, Side side) {
    return new CrossmemberJoint(ladder, ladder.crossmember(crossmember), side);
  }

  /** Its forces in an event, one for each assumption on how stiff the joints are. */
  List<MountForce> under(Assessment assessment, Event event) {
    List<MountForce> forces = new ArrayList<>();
    for (Joints joints : ladder.joints()) {
      Wrench wrench = onRail(assessment.response(event, joints));
      forces.add(new MountForce(mount(), event.name() + ", " + joints, wrench));
    }
    return forces;
  }

  private Mount mount() {
    String rail = side.word() + " rail";
    Point at = ladder.at(crossmember.name() + " " + side.word());
    return new Mount(crossmember.part() + " at " + rail, rail, at);
  }

  private Wrench onRail(Response response) {
    List<String> beams =
        ladder.members().stream()
            .filter(member -> member.part().equals(crossmember.part()))
            .findFirst()
            .orElseThrow()
            .beams();
    return side == Side.LEFT
        ? vehicleAxes(response.forces(beams.get(0)).at(0))
        : vehicleAxes(response.forces(beams.get(beams.size() - 1)).at(1)).times(-1);
  }

  /** The part beyond a cut pushes the part before it with the internal forces. */
  private Wrench vehicleAxes(InternalForces f) {
    double torque = f.t() + offCentroid(crossmember.stock(), f);
    return new Wrench(f.vy(), -f.n(), f.vz(), f.my(), -torque, f.mz());
  }

  /** Torque about the centroid of shear forces that act at the shear centre [N·m]. */
  private static double offCentroid(Stock stock, InternalForces f) {
    Properties section = stock.section().properties();
    return section.shearCentreY() * f.vz() - section.shearCentreZ() * f.vy();
  }
}

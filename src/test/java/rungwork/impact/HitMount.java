package rungwork.impact;

import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.frame.Wrench;
import rungwork.joint.Factors;
import rungwork.joint.Parts;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.ChainSheet;
import rungwork.loadpath.Corners;
import rungwork.loadpath.Face;
import rungwork.loadpath.MountChain;

/** A tab and its weld on the face of a rail, the wheel hit from in front. */
final class HitMount {
  private HitMount() {}

  /** Under a hit of so many newtons. */
  static ChainSheet sheet(Factors factors, double hit) {
    Face face = new Face(Corners.at(150, 370, 170), Face.Direction.UP, Face.Direction.LEFT);
    WeldGroup weld =
        new WeldGroup(
            "weld",
            WeldGroup.Run.bothSides(mm(40), mm(5)),
            WeldGroup.Seam.fillet(mm(3), MPa(490)),
            WeldGroup.Parent.of(Parts.S355, mm(3)));
    return new MountChain("lower fore", face, List.of(Parts.tab(), weld))
        .under(List.of(Corners.twoArms().under("hit", Wrench.force(-hit, 0, 0))), factors);
  }
}

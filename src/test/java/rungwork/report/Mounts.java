package rungwork.report;

import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.frame.Wrench;
import rungwork.joint.Bolt;
import rungwork.joint.Bracket;
import rungwork.joint.Factors;
import rungwork.joint.Parts;
import rungwork.joint.Pivot;
import rungwork.joint.PlateOnTube;
import rungwork.joint.PlateOnTube.Foot;
import rungwork.joint.Tab;
import rungwork.joint.TubeWall;
import rungwork.joint.WeldGroup;
import rungwork.joint.WeldGroup.Parent;
import rungwork.joint.WeldGroup.Run;
import rungwork.joint.WeldGroup.Seam;
import rungwork.loadpath.ChainSheet;
import rungwork.loadpath.Corners;
import rungwork.loadpath.Face;
import rungwork.loadpath.Face.Direction;
import rungwork.loadpath.MountChain;

/** A mount on the outer face of a rail, for tests of how it is shown. */
public final class Mounts {
  private Mounts() {}

  public static MountChain single() {
    return chain(Parts.tab(), Run.bothSides(mm(40), mm(5)));
  }

  public static MountChain pair() {
    Tab tab = Parts.tab();
    Tab pair = new Tab(tab.name(), tab.material(), tab.plate().paired(), tab.eye());
    return chain(pair, List.of(Run.around(mm(40), mm(32))));
  }

  public static ChainSheet sheet() {
    return single()
        .under(
            List.of(
                Corners.twoArms().under("bump", Wrench.force(0, 0, 4000)),
                Corners.twoArms().under("braking", Wrench.force(-1000, 0, 2000))),
            Factors.ROAD);
  }

  public static ChainSheet withHit() {
    return sheet()
        .and(
            single()
                .under(
                    List.of(Corners.twoArms().under("hit", Wrench.force(-5000, 0, 2000))),
                    Factors.UNFACTORED));
  }

  /** A boxed pair on a saddle over the rail. */
  public static ChainSheet wrapped() {
    Tab tab = Parts.tab();
    Tab pair = new Tab(tab.name(), tab.material(), tab.plate().paired(), tab.eye());
    Pivot bolt = new Pivot("bolt", pair, Bolt.Threads.CLEAR, Pivot.Stack.of(mm(1), mm(20)));
    Bracket bracket =
        new Bracket(
            "bracket",
            TubeWall.of(Parts.S355, mm(80), mm(60), mm(5)),
            Bracket.Outline.of(mm(60), mm(80), mm(30)),
            new Bracket.Stand(Bracket.Wrap.OVER_TOP, Bracket.Foot.ACROSS_RAIL),
            Seam.fillet(mm(5), MPa(490)));
    Face face = new Face(Corners.at(150, 370, 170), Direction.UP, Direction.LEFT);
    return new MountChain("lower fore", face, List.of(bolt, pair.boxed(mm(32)), bracket))
        .under(
            List.of(Corners.twoArms().under("braking", Wrench.force(-1000, 0, 2000))),
            Factors.ROAD);
  }

  /** A thin seam on a thin wall, the plate off its centre line: much of it outside every rule. */
  public static ChainSheet thin() {
    Tab tab = Parts.tab();
    WeldGroup weld =
        new WeldGroup(
            "weld",
            Run.bothSides(mm(12), mm(5)),
            Seam.fillet(mm(2), MPa(490)),
            Parent.of(Parts.S355, mm(2)));
    PlateOnTube wall =
        PlateOnTube.of(
            "rail wall",
            TubeWall.of(Parts.S355, mm(80), mm(40), mm(2)),
            Foot.central(PlateOnTube.Way.LONGITUDINAL, mm(40), mm(5)).moved(mm(10)));
    Pivot bolt = new Pivot("bolt", tab, Bolt.Threads.IN_PLANE, Pivot.Stack.of(mm(1), mm(20)));
    Face face = new Face(Corners.at(150, 370, 170), Direction.UP, Direction.LEFT);
    return new MountChain("lower fore", face, List.of(bolt, tab, weld, wall))
        .under(
            List.of(Corners.twoArms().under("braking", Wrench.force(-1000, 0, 2000))),
            Factors.ROAD);
  }

  private static MountChain chain(Tab tab, List<Run> runs) {
    Pivot bolt = new Pivot("bolt", tab, Bolt.Threads.IN_PLANE, Pivot.Stack.of(mm(1), mm(20)));
    WeldGroup weld =
        new WeldGroup("weld", runs, Seam.fillet(mm(5), MPa(490)), Parent.of(Parts.S355, mm(5)));
    PlateOnTube wall =
        PlateOnTube.of(
            "rail wall",
            TubeWall.of(Parts.S355, mm(80), mm(40), mm(5)),
            Foot.central(PlateOnTube.Way.TRANSVERSE, mm(40), mm(5)));
    Face face = new Face(Corners.at(150, 370, 170), Direction.UP, Direction.LEFT);
    return new MountChain("lower fore", face, List.of(bolt, tab, weld, wall));
  }
}

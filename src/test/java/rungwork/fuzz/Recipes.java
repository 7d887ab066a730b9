package rungwork.fuzz;

import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import rungwork.check.CheckSheet;
import rungwork.impact.Collapse;
import rungwork.impact.Fronts;
import rungwork.impact.Range;
import rungwork.impact.Ride;
import rungwork.impact.Runabout;
import rungwork.joint.Bracket;
import rungwork.joint.Parts;
import rungwork.joint.TubeWall;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.Anchorages;
import rungwork.loadpath.Belts;
import rungwork.quantity.Kind;
import rungwork.section.BuiltUp;
import rungwork.section.Section;
import rungwork.section.SizeTable;
import rungwork.solve.BeamForces;
import rungwork.solve.Buckling;
import rungwork.solve.Pushover;
import rungwork.solve.Response;
import rungwork.study.Comparison;
import rungwork.study.Curlew;
import rungwork.study.Spread;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;

/** Sound values that the rooms' examples do not hold. */
public final class Recipes {
  private Recipes() {}

  public static Anchorages anchorages() {
    return new Anchorages(List.of(Belts.threePoints("driver", 300), Belts.lapOnly("guest", -300)));
  }

  public static Assessment assessment() {
    return Assessment.of(Curlew.vehicle(), Curlew.ladder(), Curlew.events());
  }

  public static CheckSheet sheet() {
    return assessment().sheet();
  }

  public static Response response() {
    return assessment().response(Curlew.events().get(0), Joints.RIGID);
  }

  public static BeamForces forces() {
    return response().forces("left rail 1");
  }

  public static Object criticalLoads() {
    return Buckling.of(response()).lowest();
  }

  public static Comparison comparison() {
    return Comparison.of("front crossmember", Curlew.candidates(), Curlew::assess);
  }

  public static Ride ride() {
    return Fronts.choice().outcomes().get(0).ride();
  }

  public static List<Section> sections() {
    return List.of(
        Section.roundTube(mm(50), mm(3)),
        Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)),
        Section.angle(mm(50), mm(50), mm(5), mm(6)),
        Section.flatBar(mm(50), mm(6)),
        Section.squareTube(mm(50), mm(3)));
  }

  public static BuiltUp.Channel channel() {
    return BuiltUp.channel(mm(80), mm(40), mm(3), mm(3));
  }

  public static SizeTable sizes() {
    return SizeTable.of("square tube EN 10219-2");
  }

  public static Spread triangle() {
    return new Spread.Triangle(1, 2, 4);
  }

  public static Range range() {
    return new Range(Kind.FORCE, 1e3, 2e3);
  }

  public static Bracket bracket() {
    return new Bracket(
        "bracket",
        TubeWall.of(Parts.S355, mm(40), mm(80), mm(3)),
        Bracket.Outline.of(mm(50), mm(40), mm(40)),
        new Bracket.Stand(Bracket.Wrap.ONE_FACE, Bracket.Foot.ALONG_RAIL),
        WeldGroup.Seam.fillet(mm(3), MPa(490)));
  }

  public static Collapse collapse() {
    return Collapse.of(
        Runabout.vehicle(), Runabout.ladder(Runabout.steel(235)), Event.Hit.LEFT_TIP);
  }

  public static Pushover pushover() {
    return collapse().paths().get(0).pushed().pushover();
  }
}

package rungwork.fuzz;

import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rungwork.check.CheckSheet;
import rungwork.check.Member;
import rungwork.csv.CsvFile;
import rungwork.csv.CsvRow;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Node;
import rungwork.impact.Collapse;
import rungwork.impact.Fronts;
import rungwork.impact.Range;
import rungwork.impact.Ride;
import rungwork.impact.Runabout;
import rungwork.impact.SeenDamage;
import rungwork.joint.Bolt;
import rungwork.joint.BoltGroup;
import rungwork.joint.Bracket;
import rungwork.joint.Parts;
import rungwork.joint.Spot;
import rungwork.joint.ThroughBolt;
import rungwork.joint.TubeWall;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.Anchorages;
import rungwork.loadpath.Belts;
import rungwork.quantity.Kind;
import rungwork.record.DesignRecord;
import rungwork.section.BuiltUp;
import rungwork.section.Section;
import rungwork.section.SizeTable;
import rungwork.solve.BeamForces;
import rungwork.solve.Buckling;
import rungwork.solve.Pushover;
import rungwork.solve.Response;
import rungwork.solve.YieldSurface;
import rungwork.study.Candidate;
import rungwork.study.Comparison;
import rungwork.study.Curlew;
import rungwork.study.Input;
import rungwork.study.Measure;
import rungwork.study.Scatter;
import rungwork.study.Screening;
import rungwork.study.Search;
import rungwork.study.Spread;
import rungwork.study.Study;
import rungwork.study.Survey;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Wheel;

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
    Event hit = Event.frontalImpact(g(5), Event.Hit.FULL_WIDTH);
    Assessment pressed = Assessment.of(Curlew.vehicle(), Curlew.ladder(), List.of(hit));
    return Buckling.of(pressed.response(hit, Joints.RIGID)).lowest();
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

  public static CsvFile file() {
    byte[] text = "size,wall_mm\n50x50x3,3\n".getBytes(StandardCharsets.UTF_8);
    try {
      return CsvFile.of("rack.csv", new ByteArrayInputStream(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static CsvRow row() {
    return file().rows().get(0);
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

  public static List<Ladder> ladders() {
    return List.of(Curlew.ladder(), Runabout.cranked(Runabout.steel(235)));
  }

  public static List<Member> members() {
    return Curlew.ladder().members();
  }

  public static List<Joints> joints() {
    return Curlew.ladder().joints();
  }

  public static List<Ladder.KickUp> kickUps() {
    return Runabout.cranked(Runabout.steel(235)).kickUps();
  }

  public static Frame frame() {
    return Curlew.ladder().frame(Joints.RIGID);
  }

  public static Wheel wheel() {
    return Curlew.vehicle().wheel(Axle.FRONT, Side.LEFT);
  }

  public static DesignRecord designRecord() {
    return DesignRecord.of("a design").on("2026-11-25").with(assessment());
  }

  public static BoltGroup bolts() {
    return new BoltGroup(
        "bracket",
        Bolt.of("M8", "8.8"),
        Bolt.Threads.IN_PLANE,
        List.of(Spot.at(mm(-20), mm(0)), Spot.at(mm(20), mm(0))),
        BoltGroup.Plate.of(Parts.S235, mm(4), mm(9), mm(15)));
  }

  public static ThroughBolt throughBolt() {
    return ThroughBolt.tightened(
        "arm bolt",
        kN(8),
        TubeWall.of(Parts.S355, mm(50), mm(50), mm(3)),
        ThroughBolt.Washer.of(mm(20)));
  }

  public static SeenDamage damage() {
    return SeenDamage.named("old frame").shorter("left tip", "rear left", mm(10), mm(2));
  }

  public static BuiltUp.Tube tube() {
    return BuiltUp.tube(mm(80), mm(40), mm(3));
  }

  public static LoadCase loads() {
    Load.PerMetre sideways = new Load.PerMetre(0, 100, 0);
    return LoadCase.of("wind", new Load.AlongPart("left rail 1", 0, 0.1, sideways, sideways));
  }

  public static YieldSurface surface() {
    return YieldSurface.around(Section.rectangularTube(mm(80), mm(40), mm(3)), 355e6);
  }

  public static Assessment.Screening screening() {
    return Assessment.screening(
            Curlew.vehicle(), Curlew.ladder(), Curlew.events(), List.of(Joints.RIGID))
        .get();
  }

  public static Study<Assessment> study() {
    return Study.of(
        "the front",
        List.of(Input.of("deceleration", g(1)).within(0.2, Input.ASSUMED)),
        setting ->
            Assessment.of(
                Curlew.vehicle(),
                Curlew.ladder(),
                List.of(
                    Event.frontalImpact(
                        setting.acceleration("deceleration"), Event.Hit.FULL_WIDTH))),
        List.of(Measure.utilisation("front crossmember"), Measure.frameMass()));
  }

  public static List<Object> studies() {
    return List.of(
        study().sensitivity(),
        study().scatter(Scatter.Sampling.latinHypercube(5, 1)),
        study().family("deceleration", 3));
  }

  public static List<Node> nodes() {
    return frame().nodes();
  }

  public static List<Beam> beams() {
    return frame().beams();
  }

  public static List<Object> manyLadders() {
    List<Survey.Variant<Ladder>> ladders =
        List.of(
            new Survey.Variant<>("light", () -> Curlew.ladder()),
            new Survey.Variant<>(
                "heavy", () -> Curlew.ladder().withCrossmember("front", Curlew.tube(80, 80))));
    Function<Ladder, Assessment> assess =
        ladder -> Assessment.of(Curlew.vehicle(), ladder, List.of(Event.standing()));
    Screening.Field field =
        new Screening.Field(
            Curlew.vehicle(),
            Curlew.ladder(),
            List.of(Event.standing()),
            List.of(Candidate.of(Curlew.tube(80, 60))),
            Map.of("front", List.of(Candidate.of(Curlew.tube(60, 60)))));
    return List.of(
        Search.lightest("front", List.of("front crossmember"), ladders, assess, List.of()),
        Screening.of(field, Screening.Limits.CHECKS, (done, total, left) -> {}));
  }

  public static Survey survey() {
    return Survey.of(
        "front",
        List.of(new Survey.Variant<>("light", Recipes::assessment)),
        List.of(Measure.frameMass()));
  }
}

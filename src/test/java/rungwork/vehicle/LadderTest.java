package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Point;
import rungwork.frame.Release;

class LadderTest {
  @Test
  void features_become_nodes_on_the_rails_line() {
    Ladder ladder = Curlew.ladder();
    assertEquals(new Point(0.4, 0.4, 0.38), ladder.node("front left").at());
    assertEquals(new Point(0.4, 0, 0.38), ladder.node("front middle").at());
    assertEquals(new Point(0.45, -0.4, 0.38), ladder.node("right tip").at());
    assertEquals(new Point(0.12, 0.4, 0.38), ladder.node("front left arm ahead").at());
  }

  @Test
  void a_mount_keeps_its_own_point() {
    assertEquals(new Point(0.12, 0.43, 0.25), Curlew.ladder().at("front left arm ahead"));
    assertEquals(new Point(0.4, 0.4, 0.38), Curlew.ladder().at("front left"));
  }

  @Test
  void a_mount_at_a_crossmembers_station_shares_its_node() {
    Ladder ladder =
        Curlew.ladderParts().mount("horn", Side.LEFT, Curlew.at(400.5, 450, 380)).build();
    assertEquals("front left", ladder.node("horn").name());
  }

  @Test
  void a_mount_on_a_crossmember_cuts_it_where_it_sits() {
    Ladder ladder = Curlew.ladderParts().mountOn("front", "horn", Curlew.at(430, 150, 500)).build();
    assertEquals(new Point(0.4, 0.15, 0.38), ladder.node("horn").at());
    assertEquals(new Point(0.43, 0.15, 0.5), ladder.at("horn"));
    Frame frame = ladder.frame(Joints.RIGID);
    assertEquals("horn", frame.beam("front crossmember 1").end());
    assertEquals("front middle", frame.beam("front crossmember 2").end());
    assertEquals("front right", frame.beam("front crossmember 3").end());
  }

  @Test
  void a_ladder_tells_its_size() {
    assertEquals(
        "Ladder Curlew: rails 2800 mm long, 3 crossmembers (front, middle, rear), 10 mounts,"
            + " 37.68 kg",
        Curlew.ladder().toString());
  }

  @Test
  void a_tapering_rail_gives_a_mount_its_own_width() {
    Rail left =
        Rail.from(mm(0), mm(300))
            .to(mm(-1000), mm(500), Curlew.heavyTube())
            .to(mm(-2000), mm(500), Curlew.tube());
    Ladder ladder =
        Ladder.named("taper")
            .level(mm(400))
            .rails(left)
            .crossmember("front", mm(-500), Curlew.tube())
            .crossmember("rear", mm(-1500), Curlew.tube())
            .build();
    assertEquals(0.4, ladder.node("front left").at().y(), 1e-12);
    assertEquals(-0.4, ladder.node("front right").at().y(), 1e-12);
    Frame frame = ladder.frame(Joints.RIGID);
    assertEquals("heavy tube", frame.beam("left rail 2").section().name());
    assertEquals("tube", frame.beam("left rail 3").section().name());
    double expected = 7850 * (2 * 8e-4 * Math.hypot(1, 0.2) + 2 * 6e-4 * 1.0 + 6e-4 * (0.8 + 1.0));
    assertEquals(expected, ladder.mass(), 1e-9);
  }

  @Test
  void a_sections_plus_y_faces_outwards_on_both_rails() {
    Frame frame = Curlew.ladder().frame(Joints.RIGID);
    Beam left = frame.beam("left rail 1");
    Beam right = frame.beam("right rail 1");
    assertEquals("left tip", left.end());
    assertEquals("right tip", right.start());
  }

  @Test
  void released_joints_let_go_both_ends_of_one_crossmember() {
    Frame frame = Curlew.ladder().frame(Joints.released("front", Side.RIGHT));
    Beam left = frame.beam("front crossmember 1");
    Beam right = frame.beam("front crossmember 2");
    assertEquals(
        Set.of(Release.IN_PLANE_BENDING, Release.OUT_OF_PLANE_BENDING), left.startReleases());
    assertEquals(Release.MOMENTS, right.endReleases());
    assertEquals(Set.of(), left.endReleases());
    assertEquals(Set.of(), frame.beam("rear crossmember 1").startReleases());
    Frame other = Curlew.ladder().frame(Joints.released("front", Side.LEFT));
    assertEquals(Release.MOMENTS, other.beam("front crossmember 1").startReleases());
  }

  @Test
  void a_ladder_with_one_crossmember_never_loses_it() {
    Ladder ladder =
        Ladder.named("H")
            .level(mm(400))
            .rails(mm(0), mm(-2000), mm(800), Curlew.tube())
            .crossmember("only", mm(-1000), Curlew.tube())
            .build();
    assertEquals(
        List.of(
            "joints rigid",
            "torsion of all crossmembers released at the right",
            "torsion of all crossmembers released at the left"),
        ladder.joints().stream().map(Joints::words).toList());
  }

  @Test
  void a_variant_keeps_all_else() {
    Ladder ladder = Curlew.ladder().withCrossmember("front", Curlew.heavyTube());
    assertEquals("heavy tube", ladder.crossmember("front").stock().section().name());
    assertEquals("tube", ladder.crossmember("rear").stock().section().name());
    assertEquals(Curlew.ladder().mounts(), ladder.mounts());
    double more = 7850 * 2e-4 * 0.8;
    assertEquals(Curlew.ladder().mass() + more, ladder.mass(), 1e-9);
    assertEquals(
        Curlew.ladder().mass() + 7850 * 2e-4 * 5.6,
        Curlew.ladder().withRails(Curlew.heavyTube()).mass(),
        1e-9);
  }

  @Test
  void a_crossmember_off_the_rails_is_refused() {
    refused(
        "crossmember tail sits at x -2600 mm, behind the rails, which run from 450.0 mm to"
            + " -2350 mm",
        Curlew.ladderParts().crossmember("tail", mm(-2600), Curlew.tube()));
    refused(
        "crossmember nose sits at x 500.0 mm, ahead of the rails, which run from 450.0 mm to"
            + " -2350 mm",
        Curlew.ladderParts().crossmember("nose", mm(500), Curlew.tube()));
  }

  @Test
  void a_mount_off_its_member_is_refused() {
    refused(
        "mount tow eye sits at x -2400 mm, behind the rails, which run from 450.0 mm to -2350 mm",
        Curlew.ladderParts().mount("tow eye", Side.LEFT, Curlew.at(-2400, 400, 380)));
    refused(
        "mount horn sits at y 500.0 mm, beside the front crossmember, which runs from 400.0 mm to"
            + " -400.0 mm",
        Curlew.ladderParts().mountOn("front", "horn", Curlew.at(400, 500, 380)));
    refused(
        "mount horn sits on the fore crossmember, but ladder Curlew has only front crossmember,"
            + " middle crossmember, rear crossmember",
        Curlew.ladderParts().mountOn("fore", "horn", Curlew.at(400, 0, 380)));
  }

  @Test
  void duplicate_names_are_refused() {
    refused(
        "ladder Curlew has two features named horn; rename one",
        Curlew.ladderParts()
            .mount("horn", Side.LEFT, Curlew.at(0, 400, 380))
            .mount("horn", Side.RIGHT, Curlew.at(0, -400, 380)));
    refused(
        "ladder Curlew has two features named front left; rename one",
        Curlew.ladderParts().mount("front left", Side.LEFT, Curlew.at(0, 400, 380)));
    refused(
        "ladder Curlew has two features named front left; rename one",
        Curlew.ladderParts().crossmember("front", mm(0), Curlew.tube()));
  }

  @Test
  void two_crossmembers_at_one_station_are_refused() {
    refused(
        "crossmembers front and again both sit at x 400.0 mm",
        Curlew.ladderParts().crossmember("again", mm(400), Curlew.tube()));
  }

  @Test
  void crossing_rails_are_refused() {
    Rail left = Rail.from(mm(0), mm(300)).to(mm(-1000), mm(-20), Curlew.tube());
    refused(
        "the left rail is at y -20.00 mm where the right rail is at y 20.00 mm, at x -1000 mm; the"
            + " left rail must stay to the left",
        Ladder.named("X").level(mm(400)).rails(left).crossmember("a", mm(-100), Curlew.tube()));
  }

  @Test
  void missing_and_empty_parts_are_refused() {
    LadderBuilder noLevel = Ladder.named("bare");
    refused("ladder bare has no level; give the height of the rails' centroid line", noLevel);
    refused("ladder bare has no left rail", Ladder.named("bare").level(mm(300)));
    refused(
        "ladder bare has no left rail",
        Ladder.named("bare").level(mm(300)).rails(Rail.from(mm(0), mm(400))));
    refused(
        "ladder bare has no crossmember; its rails are not joined",
        Ladder.named("bare").level(mm(300)).rails(mm(0), mm(-100), mm(50), Curlew.tube()));
    message("rail spacing 0 mm is not above zero", () -> rails(0, -2000, 0));
    message(
        "the rail runs from x 0 mm to x 100.0 mm; give its points from front to rear",
        () -> rails(0, 100, 800));
    message("level of ladder zero 0 mm is not above zero", () -> Ladder.named("zero").level(mm(0)));
    message("a ladder has no name; give it one", () -> Ladder.named(" "));
  }

  @Test
  void an_unknown_name_lists_the_known_ones() {
    Ladder ladder = Curlew.ladder();
    message(
        "ladder Curlew has no crossmember named fore; it has front, middle, rear",
        () -> ladder.crossmember("fore"));
    message(
        "ladder Curlew has no crossmember named fore; it has front, middle, rear",
        () -> ladder.frame(Joints.released("fore", Side.LEFT)));
    String known = String.join(", ", ladder.layout().features());
    message("ladder Curlew has no feature named fore; it has " + known, () -> ladder.node("fore"));
  }

  private static LadderBuilder rails(double front, double rear, double spacing) {
    return Ladder.named("L").rails(mm(front), mm(rear), mm(spacing), Curlew.tube());
  }

  private static void refused(String message, LadderBuilder parts) {
    message(message, parts::build);
  }

  private static void message(String message, org.junit.jupiter.api.function.Executable act) {
    assertEquals(message, assertThrows(ModelException.class, act).getMessage());
  }
}

package rungwork.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.Member;
import rungwork.quantity.Units;
import rungwork.study.Curlew;
import rungwork.vehicle.Ladder;

class LadderPlanTest {
  private static final LadderPlan FULL =
      LadderPlan.of(Curlew.ladder()).with(Curlew.vehicle()).with(sheet());

  /** Utilisations from 0.1 upwards, one over 1, one part wholly and one partly not checked. */
  private static CheckSheet sheet() {
    List<Check> checks = new ArrayList<>();
    double utilisation = 0.1;
    for (Member member : Curlew.ladder().members()) {
      if (member.part().equals("rear crossmember")) {
        checks.add(Examples.open(member.part()));
      } else {
        checks.add(Examples.measured(member.part(), utilisation));
        utilisation += 0.08;
      }
    }
    checks.add(Examples.measured("front crossmember", 1.24));
    checks.add(Examples.open("middle crossmember"));
    return new CheckSheet("Curlew", checks, List.of(), List.of(), Set.of(Caution.values()));
  }

  @Test
  void the_plan_is_a_sound_drawing_with_and_without_masses_and_checks() {
    Drawings.holds(FULL.picture(Units.METRIC));
    Drawings.holds(LadderPlan.of(Curlew.ladder()).picture(Units.INCH_POUND));
    Drawings.holds(LadderPlan.of(Curlew.tapering()).with(Curlew.vehicle()).picture(Units.METRIC));
  }

  @Test
  void it_is_dimensioned_like_a_workshop_drawing() {
    List<String> words = Drawings.words(FULL.picture(Units.METRIC));
    assertTrue(words.containsAll(List.of("50", "1400", "1300", "2800", "800")), words.toString());
    assertTrue(words.containsAll(List.of("front", "middle", "rear", "left rail", "right rail")));
    List<String> inches = Drawings.words(LadderPlan.of(Curlew.ladder()).picture(Units.INCH_POUND));
    assertTrue(
        inches.containsAll(List.of("110.236", "31.496", "dimensions [in]; diamonds: mounts")));
  }

  @Test
  void rails_that_taper_show_their_spacing_at_both_ends() {
    List<String> words = Drawings.words(LadderPlan.of(Curlew.tapering()).picture(Units.METRIC));
    assertTrue(words.containsAll(List.of("660", "800")), words.toString());
  }

  @Test
  void circles_have_areas_in_proportion_to_their_masses() {
    double battery = radius("battery 180 kg");
    double person = radius("left person 75 kg");
    assertEquals(180.0 / 75, battery * battery / (person * person), 1e-2);
  }

  private static double radius(String title) {
    Element part =
        Xml.all(FULL.picture(Units.METRIC).svg(), "g").stream()
            .filter(g -> g.getFirstChild().getTextContent().equals(title))
            .findFirst()
            .orElseThrow();
    return Drawings.number((Element) part.getElementsByTagName("circle").item(0), "r");
  }

  @Test
  void the_frame_s_own_members_are_not_drawn_as_masses_again() {
    LadderPlan complete = LadderPlan.of(Curlew.ladder()).with(Curlew.vehicle().on(Curlew.ladder()));
    long circles =
        Xml.all(complete.picture(Units.METRIC).svg(), "circle").stream()
            .filter(circle -> circle.getAttribute("class").equals("weight"))
            .count();
    assertEquals(5, circles);
  }

  @Test
  void every_coloured_member_has_its_number_beside_it_and_over_has_hatch_and_word() {
    Picture picture = FULL.picture(Units.METRIC);
    List<String> words = Drawings.words(picture);
    for (Element part : Xml.all(picture.svg(), "g")) {
      String title = part.getFirstChild().getTextContent();
      if (title.contains(" rail, ") || title.contains("crossmember:")) {
        String number = title.substring(title.indexOf(": ") + 2).split("[,;]")[0];
        assertTrue(words.contains(number), number + " of " + title);
      }
    }
    Element over = part(picture, "front crossmember: 1.24 over");
    assertTrue(over.getElementsByTagName("line").getLength() > 5, "hatched");
    assertTrue(words.contains("1.24 over"));
  }

  @Test
  void what_was_not_checked_is_dashed_and_says_so() {
    Picture picture = FULL.picture(Units.METRIC);
    Element unknown = part(picture, "rear crossmember: not checked");
    assertEquals("unknown", css(unknown));
    assertTrue(Drawings.words(picture).contains("not checked"));
    Element partly = part(picture, "middle crossmember: 0.18");
    assertTrue(css(partly).endsWith(" open"), css(partly));
    assertTrue(partly.getFirstChild().getTextContent().contains("not everything was checked"));
  }

  private static Element part(Picture picture, String start) {
    return Xml.all(picture.svg(), "g").stream()
        .filter(g -> g.getFirstChild().getTextContent().startsWith(start))
        .findFirst()
        .orElseThrow();
  }

  /** The class of the shape over the paper. */
  private static String css(Element part) {
    return ((Element) part.getElementsByTagName("polygon").item(1)).getAttribute("class");
  }

  @Test
  void a_part_that_no_check_names_is_not_drawn_as_if_it_passed() {
    CheckSheet empty = CheckSheet.of("empty", List.of());
    Picture picture = LadderPlan.of(Curlew.ladder()).with(empty).picture(Units.METRIC);
    assertEquals("unknown", css(part(picture, "front crossmember: not checked")));
    assertEquals(
        Curlew.ladder().members().size(),
        Drawings.words(picture).stream().filter("not checked"::equals).count());
  }

  @Test
  void a_plan_with_checks_keeps_verdict_and_cautions_on_its_page() {
    Page page = FULL.page(Units.METRIC);
    for (Caution caution : Caution.values()) {
      assertTrue(Xml.seen(page.html()).contains(caution.text()));
      assertTrue(page.text().replaceAll("\\s+", " ").contains(caution.text()));
    }
    assertTrue(Xml.seen(page.html()).contains(sheet().verdictLine()));
    assertTrue(
        Drawings.words(FULL.picture(Units.METRIC)).stream()
            .anyMatch(
                words -> words.endsWith("This is a screening calculation, not an approval.")));
  }

  @Test
  void plain_text_names_stations_members_and_masses() {
    String text = FULL.toString();
    assertTrue(text.contains("stations from the front [mm]: 450, 400, -1000, -2300, -2350"), text);
    assertTrue(text.contains("- front crossmember: 1.24 over, combined stress"));
    assertTrue(text.contains("- battery 180 kg"));
    assertEquals(text, FULL.page(Units.METRIC).text());
  }

  @Test
  void the_front_is_marked_and_on_the_left() {
    Picture picture = FULL.picture(Units.METRIC);
    Element front =
        Xml.all(picture.svg(), "text").stream()
            .filter(
                t -> t.getTextContent().equals("front") && t.getAttribute("class").equals("strong"))
            .findFirst()
            .orElseThrow();
    assertTrue(Drawings.number(front, "x") < 0);
    Spot ahead = Sight.plan(100).along(1, 0, 0);
    Spot left = Sight.plan(100).along(0, 1, 0);
    assertTrue(ahead.x() < 0 && left.y() > 0, "seen from above, not mirrored");
  }

  @Test
  void names_are_escaped() {
    Ladder nasty =
        Curlew.parts()
            .rails(mm(450), mm(-2350), mm(800), Curlew.tube(80, 40))
            .crossmember(Examples.NASTY, mm(-500), Curlew.tube(50, 50))
            .build();
    Page page = LadderPlan.of(nasty).page(Units.METRIC);
    Xml.parse(page.html());
    assertFalse(page.html().contains("<script"));
  }

  @Test
  void labels_do_not_cover_each_other() {
    Labels labels = new Labels(new Canvas());
    labels.keepFree(new Box(-50, -50, 50, 50));
    Label inside = Label.middle(new Spot(0, 0), "mass");
    Label outside = Label.middle(new Spot(0, 80), "mass");
    assertEquals(outside, labels.put(List.of(inside, outside)));
    assertEquals(inside, labels.put(List.of(inside, outside)), "nothing free: the first place");
  }

  @Test
  void kick_ups_stand_in_a_table_of_their_own() {
    String text = LadderPlan.of(kickedUp()).page(Units.METRIC).text();
    assertTrue(text.contains("front           -100          150         90"), text);
    assertFalse(LadderPlan.of(Curlew.ladder()).page(Units.METRIC).text().contains("kick-up"));
  }

  @Test
  void from_the_left_it_shows_heights_kick_ups_and_the_wheelbase() {
    Ladder raised = kickedUp();
    Picture picture = LadderPlan.of(raised).with(Curlew.vehicle()).elevation(Units.METRIC);
    Drawings.holds(picture);
    List<String> words = Drawings.words(picture);
    assertTrue(
        words.containsAll(List.of("rises 90 mm", "300", "250", "front axle")), words.toString());
    assertTrue(words.stream().anyMatch(one -> one.startsWith("centre of mass ")));
    Drawings.holds(LadderPlan.of(Curlew.tapering()).elevation(Units.INCH_POUND));
  }

  @Test
  void from_the_left_a_rail_is_as_deep_as_its_tube_and_as_high_as_it_will_stand() {
    LadderPlan plan = LadderPlan.of(kickedUp());
    Picture picture = plan.elevation(Units.METRIC);
    Element rail = (Element) part(picture, "left rail").getElementsByTagName("polygon").item(0);
    double[] corners = Drawings.places(rail);
    double level = plan.ladder().level();
    assertEquals(0.08 * plan.scale(), Math.abs(corners[1] - corners[7]), 0.02, "80 mm tube");
    assertEquals(-(level + 0.09) * plan.scale(), (corners[1] + corners[7]) / 2, 0.02);
    assertEquals(-0.45 * plan.scale(), corners[0], 0.02, "the tip ahead of the front axle");
  }

  private static Ladder kickedUp() {
    return Curlew.parts()
        .rails(mm(450), mm(-2350), mm(800), Curlew.tube(80, 40))
        .kickUp("front", mm(-100), mm(150), mm(90))
        .build();
  }
}

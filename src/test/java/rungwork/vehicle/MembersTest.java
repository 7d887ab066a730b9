package rungwork.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Member;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.Member.Weld;

class MembersTest {
  @Test
  void rails_are_cut_at_crossmembers() {
    assertEquals(
        List.of(
            "front crossmember",
            "middle crossmember",
            "rear crossmember",
            "left rail, tip to front",
            "left rail, front to middle",
            "left rail, middle to rear",
            "left rail, rear to tail",
            "right rail, tip to front",
            "right rail, front to middle",
            "right rail, middle to rear",
            "right rail, rear to tail"),
        Curlew.ladder().members().stream().map(Member::part).toList());
  }

  @Test
  void a_rail_buckles_over_the_crossmember_spacing() {
    Member bay = member(Curlew.ladder(), "right rail, front to middle");
    BucklingLengths expected =
        new BucklingLengths(1.4, 1.4, "crossmember spacing (K = 1), hinged and held at both ends");
    assertEquals(expected.reason(), bay.buckling().reason());
    assertEquals(1.4, bay.buckling().inPlane(), 1e-12);
    assertEquals(1.4, bay.buckling().outOfPlane(), 1e-12);
    assertEquals(
        0.1, member(Curlew.ladder(), "left rail, tip to front").buckling().inPlane(), 1e-12);
  }

  @Test
  void welds_count_from_where_the_member_starts() {
    List<Weld> right = member(Curlew.ladder(), "right rail, front to middle").welds();
    List<Weld> left = member(Curlew.ladder(), "left rail, front to middle").welds();
    assertEquals(
        List.of(
            "front right",
            "front right arm ahead",
            "front right arm behind",
            "seat right front",
            "middle right"),
        right.stream().map(Weld::name).toList());
    assertEquals(0.28, right.get(1).at(), 1e-12);
    assertEquals("middle left", left.get(0).name());
    assertEquals(1.4 - 0.28, left.get(3).at(), 1e-12);
    assertEquals(
        List.of("front left"),
        member(Curlew.ladder(), "left rail, tip to front").welds().stream()
            .map(Weld::name)
            .toList());
  }

  @Test
  void a_bay_of_two_stocks_is_two_members_with_the_bays_buckling_length() {
    Rail left =
        Rail.from(mm(0), mm(400))
            .to(mm(-1200), mm(400), Curlew.heavyTube())
            .to(mm(-2000), mm(400), Curlew.tube());
    Ladder ladder =
        Ladder.named("two stocks")
            .level(mm(400))
            .rails(left)
            .crossmember("front", mm(0), Curlew.tube())
            .crossmember("rear", mm(-2000), Curlew.tube())
            .build();
    assertEquals(
        List.of("left rail, front to rear, part 1", "left rail, front to rear, part 2"),
        ladder.members().stream()
            .map(Member::part)
            .filter(part -> part.startsWith("left"))
            .toList());
    Member part = member(ladder, "left rail, front to rear, part 2");
    assertEquals(2.0, part.buckling().inPlane(), 1e-12);
    assertEquals(List.of("left rail 2"), part.beams());
  }

  private static Member member(Ladder ladder, String part) {
    return ladder.members().stream()
        .filter(member -> member.part().equals(part))
        .findFirst()
        .orElseThrow();
  }
}

package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.impact.OrderOfFailure.Detail;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.quantity.Kind;

class TableOfPartsTest {
  private static final Set<Zone> ALL = Set.of(Zone.values());

  private static Part known(String name, Zone zone, double station, double low) {
    return new Part(
        name,
        zone,
        station,
        Optional.of(new Range(Kind.ACCELERATION, low, 2 * low)),
        Optional.empty(),
        new Detail("first yield", "", List.of(), List.of()));
  }

  private static List<String> names(List<Part> parts) {
    return parts.stream().map(Part::name).toList();
  }

  @Test
  void each_zone_of_which_nothing_was_said_has_a_row_where_it_usually_stands() {
    Part tip = known("tip", Zone.RAIL_TIP, 0.4, 80);
    Part rear = known("rear", Zone.RAIL, -1.5, 70);
    Part anchor = Part.unknown("lap anchor", Zone.BELT_ANCHORS, -1.2);
    TableOfParts table = TableOfParts.of(List.of(rear, tip, anchor), Set.of(Zone.MOTOR_MOUNTS));
    assertEquals(
        List.of(
            "tyre and bumper",
            "crush element",
            "tip",
            "front mounts",
            "steering gear mounts",
            "lap anchor",
            "rear"),
        names(table.rows()));
    assertEquals(
        List.of(
            "tyre and bumper: no figures given",
            "crush element: no figures given",
            "front mounts: no figures given",
            "steering gear mounts: no figures given",
            "lap anchor: no figures given"),
        table.notChecked());
  }

  @Test
  void at_one_station_the_zones_stand_in_their_own_order() {
    Part rail = known("rail", Zone.RAIL, 0.1, 5);
    Part cross = known("cross", Zone.CROSSMEMBER, 0.1, 9);
    assertEquals(
        List.of("cross", "rail"), names(TableOfParts.of(List.of(rail, cross), ALL).rows()));
  }

  @Test
  void the_order_is_that_of_the_low_ends() {
    Part unknown = Part.unknown("mount", Zone.MOTOR_MOUNTS, 0.2);
    List<Part> parts =
        List.of(
            known("b", Zone.RAIL, 1, 50),
            unknown,
            known("c", Zone.RAIL, 2, 90),
            known("a", Zone.RAIL, 0, 40));
    assertEquals(List.of("a", "b", "c"), names(TableOfParts.of(parts, ALL).order()));
  }

  @Test
  void capacity_design_sets_the_foremost_part_against_the_weakest_behind_it() {
    Part front = known("front", Zone.CRUSH_ELEMENT, 0.5, 10);
    Part strong = known("strong", Zone.RAIL, 0.1, 60);
    Part weak = known("weak", Zone.RAIL, -1, 30);
    Part whole = known("whole", Zone.WHOLE_FRAME, Double.POSITIVE_INFINITY, 1);
    TableOfParts table = TableOfParts.of(List.of(whole, strong, weak, front), ALL);
    OrderOfFailure.CapacityDesign found =
        table
            .capacityDesign(
                (one, other) ->
                    Range.ratio(other.first().get().low() / one.first().get().high(), 99))
            .orElseThrow();
    assertEquals("front", found.front().name());
    assertEquals("weak", found.behind().name());
    assertEquals(Range.ratio(30.0 / 20, 99), found.ratio());
  }

  @Test
  void capacity_design_needs_two_parts_of_which_something_is_known() {
    Part front = known("front", Zone.CRUSH_ELEMENT, 0.5, 10);
    Part unknown = Part.unknown("mount", Zone.MOTOR_MOUNTS, 0.2);
    Part rail = known("rail", Zone.RAIL, 0, 20);
    assertEquals(
        Optional.empty(),
        TableOfParts.of(List.of(front, unknown), ALL).capacityDesign((a, b) -> Range.ratio(1, 2)));
    assertTrue(
        TableOfParts.of(List.of(front, rail), ALL)
            .capacityDesign((a, b) -> Range.ratio(1, 2))
            .isPresent());
  }

  @Test
  void all_reasons_of_a_part_are_told() {
    Part part =
        new Part(
            "rail",
            Zone.RAIL,
            0,
            Optional.empty(),
            Optional.empty(),
            new Detail("", "", List.of(), List.of("no metal", "no wall")));
    assertEquals(
        List.of("rail: no metal; no wall"), TableOfParts.of(List.of(part), ALL).notChecked());
  }
}

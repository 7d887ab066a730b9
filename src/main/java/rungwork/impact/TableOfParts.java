package rungwork.impact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import rungwork.impact.OrderOfFailure.CapacityDesign;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;

/**
 * The rows of an order of failure, from the front to the passenger bay.
 *
 * @param rows parts of which something is known, and those that stand as not checked
 */
record TableOfParts(List<Part> rows) {
  /** What every vehicle has, or is asked about. */
  private static final List<Zone> EXPECTED =
      List.of(
          Zone.TYRE_AND_BUMPER,
          Zone.CRUSH_ELEMENT,
          Zone.FRONT_MOUNTS,
          Zone.STEERING_GEAR,
          Zone.MOTOR_MOUNTS,
          Zone.BELT_ANCHORS);

  TableOfParts {
    rows = List.copyOf(rows);
  }

  /** The parts with a row for each zone of which nothing was said, from the front. */
  static TableOfParts of(List<Part> parts, Set<Zone> absent) {
    List<Part> all = new ArrayList<>(parts);
    for (Zone zone : EXPECTED) {
      if (!absent.contains(zone) && all.stream().noneMatch(part -> part.zone() == zone)) {
        all.add(Part.unknown(zone.words(), zone, zone.usualPlace()));
      }
    }
    all.sort(Comparator.comparingDouble((Part part) -> -part.station()).thenComparing(Part::zone));
    return new TableOfParts(all);
  }

  /** Those of which something is known, the first to give way at its low strength first. */
  List<Part> order() {
    return rows.stream()
        .filter(part -> part.first().isPresent())
        .sorted(Comparator.comparingDouble(part -> part.first().orElseThrow().low()))
        .toList();
  }

  /** The foremost known part against the weakest of the others; nothing where two are not known. */
  Optional<CapacityDesign> capacityDesign(BiFunction<Part, Part, Range> margin) {
    List<Part> known =
        rows.stream()
            .filter(part -> part.first().isPresent() && part.zone() != Zone.WHOLE_FRAME)
            .toList();
    if (known.size() < 2) {
      return Optional.empty();
    }
    Part front = known.get(0);
    return known.stream()
        .skip(1)
        .map(behind -> new CapacityDesign(front, behind, margin.apply(front, behind)))
        .min(Comparator.comparingDouble(each -> each.ratio().low()));
  }

  /** The parts of which nothing is known, with why. */
  List<String> notChecked() {
    return rows.stream()
        .filter(part -> part.first().isEmpty())
        .map(part -> part.name() + ": " + String.join("; ", part.detail().notes()))
        .toList();
  }
}

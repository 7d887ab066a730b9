package rungwork.validation;

import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.record.Inspection;
import rungwork.record.Reading;
import rungwork.record.Reading.Limit;
import rungwork.section.Section;
import rungwork.vehicle.Ladder;

/** What an inspection holds a frame against, beside what is printed. */
class RepairToleranceValidationTest {
  private static final Stock TUBE =
      new Stock(Section.squareTube(mm(50), mm(3)), Material.rated("S235JRH"));

  private static final Inspection SEEN =
      Inspection.of(
              Ladder.named("bay")
                  .level(mm(400))
                  .rails(mm(0), mm(-2500), mm(800), TUBE)
                  .crossmember("front", mm(0), TUBE)
                  .crossmember("rear", mm(-2500), TUBE)
                  .build())
          .diagonal("front", "rear", mm(2625), mm(2625));

  private static Reading first(Reading.Kind kind) {
    return SEEN.readings().stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
  }

  private static double builtMm(Reading.Kind kind) {
    return 1000 * SEEN.asBuilt(first(kind)).value();
  }

  @Test
  void general_tolerances_of_welded_work() {
    Published.read("ISO 13920, tables 1 and 3, reprinted on a public page", "ladder bay")
        .value("class B, 400 to 1000 mm", "mm", "3", builtMm(Reading.Kind.WIDTH))
        .value("class B, 2000 to 4000 mm", "mm", "6", builtMm(Reading.Kind.LENGTH))
        .value("class F, 2000 to 4000 mm", "mm", "6", builtMm(Reading.Kind.HEIGHT));
  }

  @Test
  void frames_of_light_army_vehicles() {
    List<Limit> pair = SEEN.distortions().get(0).limits();
    Published.read("US Army TM 9-2320-289-34, para. 9-3", "frame measurement")
        .value("distance", "in", "0.12", first(Reading.Kind.WIDTH).limits().get(0).value() / 0.0254)
        .value("diagonals the same", "mm", "5", 1000 * pair.get(0).value());
    Published.read("US Army TM 9-2320-280-34, para. 21-4", "skewed frame rails")
        .value("diagonals differ", "mm", "6", 1000 * pair.get(1).value());
  }
}

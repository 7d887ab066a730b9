package rungwork.impact;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Every combination of the low and the high ends of what is known of a hit: closing speed, mass,
 * frame, crush elements, the other vehicle.
 *
 * @param scene how fast, how heavy, against what
 * @param rails the frame's force over crush, at both strengths
 * @param motor a motor on rubber, if it counts apart
 */
record Combinations(Scene scene, RigidOrCrush.Rails rails, Optional<CrashModel.Motor> motor) {

  /**
   * The crashes of a design.
   *
   * @param design its name and mass
   * @param element what crushes in front of the frame, if it is met
   * @param met how many of them
   * @return models, none twice, in a fixed order
   */
  List<CrashModel> of(RigidOrCrush.Design design, Optional<CrushElement> element, int met) {
    Set<CrashModel> models = new LinkedHashSet<>();
    for (double speed : ends(scene.closing())) {
      for (double mass : ends(scene.mass())) {
        for (CrushCurve frame : List.of(rails.low(), rails.high())) {
          CrashModel bare =
              new CrashModel(
                  design.name(),
                  speed,
                  mass + design.mass(),
                  frame,
                  Optional.empty(),
                  motor,
                  Optional.empty());
          element.ifPresentOrElse(
              one -> both(one, met).forEach(front -> addAll(models, bare.behind(front))),
              () -> addAll(models, bare));
        }
      }
    }
    return List.copyOf(models);
  }

  private static List<CrushCurve> both(CrushElement element, int met) {
    return Stream.of(CrushTube.Strength.LOW, CrushTube.Strength.HIGH)
        .map(strength -> element.curve(strength).times(met))
        .toList();
  }

  private void addAll(Set<CrashModel> models, CrashModel model) {
    if (!(scene.obstacle() instanceof Obstacle.OtherVehicle other)) {
      models.add(model);
      return;
    }
    for (double mass : ends(other.mass())) {
      for (double stiffness : ends(other.stiffness())) {
        CrushCurve front = CrushCurve.linear("other front", stiffness, 2);
        models.add(
            new CrashModel(
                model.name(),
                model.speed(),
                model.mass(),
                model.frame(),
                model.front(),
                model.motor(),
                Optional.of(new CrashModel.Other(mass, front))));
      }
    }
  }

  private static double[] ends(Range range) {
    return range.exact() ? new double[] {range.low()} : new double[] {range.low(), range.high()};
  }
}

package rungwork.impact;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwork.quantity.Units;

/**
 * What the reader must know of what a design gave.
 *
 * @param outcome what it gave
 */
record OutcomeRemarks(RigidOrCrush.Outcome outcome) {

  List<String> in(Units units) {
    Set<String> lines = new LinkedHashSet<>();
    missed(units).ifPresent(lines::add);
    outcome.design().element().ifPresent(one -> lines.addAll(one.outsideTests()));
    usedUp().ifPresent(lines::add);
    outcome.crashes().forEach(crash -> lines.addAll(crash.marks(units)));
    comesOffTooFast().ifPresent(lines::add);
    return List.copyOf(lines);
  }

  private Optional<String> missed(Units units) {
    Obstacle obstacle = outcome.scene().obstacle();
    return outcome.design().element().isEmpty() || outcome.design().met(obstacle) > 0
        ? Optional.empty()
        : Optional.of(
            "None of its elements meets "
                + obstacle.words(units)
                + ": they do nothing in this hit.");
  }

  private Optional<String> usedUp() {
    long used =
        outcome.crashes().stream()
            .flatMap(crash -> crash.events().stream())
            .filter(event -> event.label().endsWith(": " + CrushElement.USED_UP))
            .count();
    return used == 0
        ? Optional.empty()
        : Optional.of(
            "Its stroke is used up in %d of %d combinations; the rest of the speed meets the frame."
                .formatted(used, outcome.crashes().size()));
  }

  private Optional<String> comesOffTooFast() {
    Range back = outcome.restitution();
    Range stated = outcome.scene().restitution();
    return back.high() <= stated.high()
        ? Optional.empty()
        : Optional.of(
            "It comes off at "
                + back
                + " of the closing speed, more than the scene's "
                + stated
                + ": its curves give back too much; let them unload more steeply.");
  }
}

package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Mass;
import rungwork.quantity.Units;

/**
 * The masses that a ladder carries, in plan.
 *
 * @param carried the masses
 * @param units the reader's units
 * @param sight how the ladder is seen
 * @param canvas drawn on
 * @param labels already there
 */
record PlanMasses(Carried carried, Units units, Sight sight, Canvas canvas, Labels labels) {
  private static final double ROW = 15;

  /** Circles, the area in proportion. */
  void circles() {
    carried.masses().forEach(this::circle);
  }

  /** Their names, each inside its circle or near it. */
  void names() {
    carried.masses().forEach(this::name);
  }

  List<String> words() {
    return carried.masses().stream().map(mass -> Carried.words(mass, units)).toList();
  }

  private void circle(Mass mass) {
    Spot at = sight.place(mass.at());
    canvas.part(
        Carried.words(mass, units), () -> canvas.circle("weight", at, carried.radius(mass)));
  }

  private void name(Mass mass) {
    Spot at = sight.place(mass.at()).plus(0, 4);
    Label middle = Label.middle(at, Carried.words(mass, units)).css("small on");
    double half = middle.box().width() / 2;
    List<Label> places = new ArrayList<>();
    for (double row : new double[] {0, 1, -1, 2, -2, 3, -3, 4, -4}) {
      for (double side : new double[] {0, -0.5, 0.5, -1, 1}) {
        places.add(middle.moved(side * (half + carried.radius(mass) + 4), row * ROW));
      }
    }
    labels.put(places);
  }
}

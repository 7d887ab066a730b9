package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.solve.Pushover.Corner;
import rungwork.solve.Pushover.Place;
import rungwork.solve.Pushover.Stage;

/** The states that a frame has passed while a load grew: its corners, shapes and stages. */
final class PushoverPath {
  private final List<Stage> stages = new ArrayList<>();
  private final List<Corner> corners = new ArrayList<>();
  private final List<double[]> shapes = new ArrayList<>();
  private final List<Integer> cornerOf = new ArrayList<>();
  private final double[] motions;
  private double factor;
  private double travel;
  private double energy;

  PushoverPath(int motions) {
    this.motions = new double[motions];
  }

  /** Forgets how the frame came here, not where it is: from here on another load grows. */
  void begin(List<Place> hinges) {
    stages.clear();
    cornerOf.clear();
    shapes.clear();
    corners.clear();
    factor = 0;
    travel = 0;
    energy = 0;
    turnCorner();
    add(new Stage(0, 0, 0, hinges, hinges, List.of()));
  }

  /**
   * Goes straight on.
   *
   * @param rates motions of the nodes for a unit of the load
   * @param work of a unit of the load for a unit of it [J]
   * @param step by how much it grows
   */
  void advance(double[] rates, double work, double step) {
    double worked = step * work;
    for (int i = 0; i < motions.length; i++) {
      motions[i] += step * rates[i];
    }
    travel += worked;
    energy += worked * (factor + step / 2);
    factor += step;
    turnCorner();
  }

  private void turnCorner() {
    corners.add(new Corner(factor, travel, energy));
    shapes.add(motions.clone());
  }

  /** A stage, where hinges open or lock. */
  void note(List<Place> before, List<Place> now) {
    List<Place> opened = now.stream().filter(place -> !before.contains(place)).toList();
    List<Place> locked = before.stream().filter(place -> !now.contains(place)).toList();
    if (!opened.isEmpty() || !locked.isEmpty()) {
      add(new Stage(factor, travel, energy, now, opened, locked));
    }
  }

  /** The mechanism is a stage even where no hinge but another face of one completes it. */
  void noteEnd(List<Place> hinges) {
    if (stages.isEmpty() || stages.get(stages.size() - 1).factor() < factor) {
      add(new Stage(factor, travel, energy, hinges, List.of(), List.of()));
    }
  }

  private void add(Stage stage) {
    stages.add(stage);
    cornerOf.add(corners.size() - 1);
  }

  /** Where the load is now [1]. */
  double factor() {
    return factor;
  }

  /** Where the first hinge opened; where the load is now if none did [1]. */
  double firstHingeFactor() {
    return stages.stream()
        .filter(stage -> !stage.opened().isEmpty())
        .mapToDouble(Stage::factor)
        .findFirst()
        .orElse(factor);
  }

  /** How the nodes have moved, what acted before the path began included. */
  double[] motions() {
    return motions;
  }

  List<Stage> stages() {
    return List.copyOf(stages);
  }

  List<Corner> corners() {
    return List.copyOf(corners);
  }

  /** The number of the corner at which a stage is. */
  int cornerOf(int stage) {
    return cornerOf.get(stage);
  }

  /** How the nodes have moved at a corner since the path began. */
  double[] shapeSinceBeginning(int corner) {
    double[] since = shapes.get(corner).clone();
    for (int i = 0; i < since.length; i++) {
      since[i] -= shapes.get(0)[i];
    }
    return since;
  }

  /** The area under the path until a travel, level beyond its end [J]. */
  double energy(double way) {
    Corner before = corners.get(0);
    for (int next = 1; next < corners.size() && corners.get(next).travel() <= way; next++) {
      before = corners.get(next);
    }
    double beyond = way - before.travel();
    return before.energy() + beyond * (before.factor() + slopeFrom(before) * beyond / 2);
  }

  private double slopeFrom(Corner from) {
    int next = corners.indexOf(from) + 1;
    if (next == corners.size()) {
      return 0;
    }
    Corner to = corners.get(next);
    return (to.factor() - from.factor()) / (to.travel() - from.travel());
  }
}

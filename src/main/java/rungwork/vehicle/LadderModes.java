package rungwork.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.frame.Frame;
import rungwork.frame.Mass;
import rungwork.solve.Displacement;
import rungwork.solve.Vibration;

/**
 * The slow vibrations of a ladder that floats with its vehicle's masses, told by how its rails move
 * at the crossmembers: against each other up and down (twist), alike up and down (bending), or
 * sideways.
 *
 * <p>Each mass moves rigidly with the nodes under its fastening points, tyres and springs are left
 * out. A vibration has a name when its kind makes more than half of the squares of these motions.
 */
final class LadderModes {
  /** Vibrations among which the first twist and the first bending are sought. */
  private static final int MOST = 12;

  private final Ladder ladder;
  private final List<Vibration.Mode> modes;

  LadderModes(Vehicle vehicle, Ladder ladder, Joints joints) {
    this.ladder = ladder;
    Frame frame = ladder.frame(joints);
    List<Mass> carried = new ArrayList<>(vehicle.masses());
    carried.removeAll(ladder.masses());
    modes = Vibration.of(frame, carried.stream().map(this::onNodes).toList()).modes(MOST);
  }

  private Mass onNodes(Mass mass) {
    List<String> nodes =
        mass.carriers().stream().map(carrier -> ladder.node(carrier).name()).distinct().toList();
    return new Mass(mass.name(), mass.kilograms(), mass.at(), mass.own(), nodes, 1);
  }

  /** The slowest twist, if it is among the first vibrations. */
  Optional<Vibration.Mode> twist() {
    return first(Motion::opposite);
  }

  /** The slowest bending out of the ladder's plane, if it is among the first vibrations. */
  Optional<Vibration.Mode> bending() {
    return first(Motion::alike);
  }

  private Optional<Vibration.Mode> first(ToDoubleFunction<Motion> kind) {
    return modes.stream().filter(mode -> motion(mode).share(kind) > 0.5).findFirst();
  }

  private Motion motion(Vibration.Mode mode) {
    Motion sum = new Motion(0, 0, 0);
    for (Crossmember crossmember : ladder.crossmembers()) {
      sum = sum.plus(at(mode, crossmember, Side.LEFT), at(mode, crossmember, Side.RIGHT));
    }
    return sum;
  }

  private Displacement at(Vibration.Mode mode, Crossmember crossmember, Side side) {
    return mode.shape(ladder.node(crossmember.name() + " " + side.word()).name());
  }

  /**
   * Squares of how the rails move at the crossmembers.
   *
   * @param alike up and down together
   * @param opposite up and down against each other
   * @param level sideways together, or along against each other
   */
  private record Motion(double alike, double opposite, double level) {
    Motion plus(Displacement left, Displacement right) {
      double sideways = (left.uy() + right.uy()) / 2;
      double shear = (left.ux() - right.ux()) / 2;
      return new Motion(
          alike + Math.pow((left.uz() + right.uz()) / 2, 2),
          opposite + Math.pow((left.uz() - right.uz()) / 2, 2),
          level + sideways * sideways + shear * shear);
    }

    double share(ToDoubleFunction<Motion> kind) {
      return kind.applyAsDouble(this) / (alike + opposite + level);
    }
  }
}

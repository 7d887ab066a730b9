package rungwork.impact;

import java.util.List;
import java.util.function.Function;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.solve.Displacement;
import rungwork.vehicle.Ladder;

/** A kind of permanent set and how it follows from the motions of nodes. */
enum PermanentSet {
  /**
   * By how much the distance of two features has become less; along one rail what its bow takes
   * counts too, Σ t²/(2·l) over its pieces less T²/(2·L) of the chord, t and T across them.
   */
  SHORTER {
    @Override
    double of(List<String> features, Bent bent) {
      String from = bent.ladder.node(features.get(0)).name();
      String to = bent.ladder.node(features.get(1)).name();
      Frame frame = bent.frame;
      double bow = 0;
      for (Beam piece : between(frame, from, to)) {
        bow += taken(frame.node(piece.start()), frame.node(piece.end()), bent.moves);
      }
      if (bow > 0) {
        bow -= taken(frame.node(from), frame.node(to), bent.moves);
      }
      return bow - longer(features.get(0), features.get(1), bent);
    }
  },
  /** By how much the distance of the first two has grown more than that of the last two. */
  DIAGONALS {
    @Override
    double of(List<String> features, Bent bent) {
      return longer(features.get(0), features.get(1), bent)
          - longer(features.get(2), features.get(3), bent);
    }
  },
  /** How far the first has sunk below the line between the others. */
  SAG {
    @Override
    double of(List<String> features, Bent bent) {
      double at = bent.ladder.node(features.get(0)).at().x();
      double ahead = bent.ladder.node(features.get(1)).at().x();
      double behind = bent.ladder.node(features.get(2)).at().x();
      if (ahead == behind) {
        throw new ModelException(
            "the sag of %s needs two places at different stations; %s and %s stand at the same one"
                .formatted(features.get(0), features.get(1), features.get(2)));
      }
      double part = (ahead - at) / (ahead - behind);
      return (1 - part) * up(features.get(1), bent)
          + part * up(features.get(2), bent)
          - up(features.get(0), bent);
    }
  };

  /** How many features it takes. */
  int places() {
    return switch (this) {
      case SHORTER -> 2;
      case SAG -> 3;
      case DIAGONALS -> 4;
    };
  }

  /**
   * A frame that has moved.
   *
   * @param ladder whose features are known
   * @param frame of it
   * @param moves of its nodes
   */
  record Bent(Ladder ladder, Frame frame, Function<String, Displacement> moves) {}

  /**
   * The set.
   *
   * @param features between which it is measured
   * @param bent the frame and how it moved
   * @return [m]
   */
  abstract double of(List<String> features, Bent bent);

  /** The pieces of one rail between two nodes; none where they are not both on it. */
  private static List<Beam> between(Frame frame, String from, String to) {
    double front = Math.max(frame.node(from).at().x(), frame.node(to).at().x());
    double rear = Math.min(frame.node(from).at().x(), frame.node(to).at().x());
    for (String rail : List.of("left rail ", "right rail ")) {
      List<Beam> all = frame.beams().stream().filter(beam -> beam.name().startsWith(rail)).toList();
      if (all.stream().anyMatch(beam -> ends(beam).contains(from))
          && all.stream().anyMatch(beam -> ends(beam).contains(to))) {
        return all.stream()
            .filter(beam -> ends(beam).stream().allMatch(n -> frame.node(n).at().x() <= front))
            .filter(beam -> ends(beam).stream().allMatch(n -> frame.node(n).at().x() >= rear))
            .toList();
      }
    }
    return List.of();
  }

  private static List<String> ends(Beam beam) {
    return List.of(beam.start(), beam.end());
  }

  /** What a piece that keeps its length loses of its reach when its ends move apart sideways. */
  private static double taken(Node from, Node to, Function<String, Displacement> moves) {
    Displacement d = moves.apply(to.name()).plus(moves.apply(from.name()).times(-1));
    double length = from.at().distance(to.at());
    double along =
        (d.ux() * (to.at().x() - from.at().x())
                + d.uy() * (to.at().y() - from.at().y())
                + d.uz() * (to.at().z() - from.at().z()))
            / length;
    double all = d.ux() * d.ux() + d.uy() * d.uy() + d.uz() * d.uz();
    return (all - along * along) / (2 * length);
  }

  private static double up(String feature, Bent bent) {
    return bent.moves.apply(bent.ladder.node(feature).name()).uz();
  }

  private static double longer(String from, String to, Bent bent) {
    Point start = bent.ladder.node(from).at();
    Point end = bent.ladder.node(to).at();
    Displacement d =
        bent.moves
            .apply(bent.ladder.node(to).name())
            .plus(bent.moves.apply(bent.ladder.node(from).name()).times(-1));
    double along =
        d.ux() * (end.x() - start.x())
            + d.uy() * (end.y() - start.y())
            + d.uz() * (end.z() - start.z());
    return along / start.distance(end);
  }
}

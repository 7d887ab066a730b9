package rungwork.solve;

import java.util.List;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Point;
import rungwork.frame.Support;

/**
 * A frame with every beam cut into equal pieces, joined stiffly. Its beams are the pieces, a beam's
 * following each other in the order of the beams; its first nodes are the frame's own.
 */
final class Cutting {
  private final Frame whole;
  private final int pieces;
  private final Frame cut;

  /**
   * Cuts a frame.
   *
   * @param whole the frame
   * @param pieces how many of each beam, at least 1
   */
  Cutting(Frame whole, int pieces) {
    this.whole = whole;
    this.pieces = pieces;
    Frame.Builder builder = whole.anew();
    whole.nodes().forEach(builder::node);
    whole.beams().forEach(beam -> cut(builder, beam));
    whole.supports().forEach(builder::support);
    cut = builder.build();
  }

  private void cut(Frame.Builder builder, Beam beam) {
    Point from = whole.startOf(beam);
    Point to = whole.endOf(beam);
    for (int i = 1; i < pieces; i++) {
      double part = (double) i / pieces;
      builder.node(
          node(beam, i),
          from.plus(
              part * (to.x() - from.x()), part * (to.y() - from.y()), part * (to.z() - from.z())));
    }
    for (int i = 0; i < pieces; i++) {
      End start = i == 0 ? beam.atStart() : End.RIGID;
      End end = i == pieces - 1 ? beam.atEnd() : End.RIGID;
      builder.beam(
          beam.between(beam.name() + ", piece " + (i + 1), node(beam, i), node(beam, i + 1))
              .joined(start, end));
    }
  }

  /** The node after so many pieces of a beam: between its ends named after the beam. */
  String node(Beam beam, int piece) {
    if (piece == 0) {
      return beam.start();
    }
    return piece == pieces ? beam.end() : beam.name() + ", cut " + piece;
  }

  /** The frame of the pieces. */
  Frame frame() {
    return cut;
  }

  /** How many pieces a beam has. */
  int pieces() {
    return pieces;
  }

  /** The frame that was cut. */
  Frame whole() {
    return whole;
  }

  /** Counts the pieces, on the frame's supports or held only against its free motion. */
  Structure structure() {
    List<Support> supports =
        whole.supports().isEmpty() ? new FreeMotion(whole).holds() : whole.supports();
    return new Structure(cut, supports);
  }
}

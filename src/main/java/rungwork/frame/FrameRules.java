package rungwork.frame;

import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/** What must be true of a frame, whoever solves it. */
final class FrameRules {
  /** Nodes farther than this from the frame's plane are refused [m]: a tenth of a millimetre. */
  static final double FLATNESS = 1e-4;

  /** A beam that runs this close to the frame's normal has no y [1]: a thousandth of its length. */
  private static final double UPRIGHT = 1e-3;

  private final Frame frame;
  private final boolean mayRise;
  private final List<Node> nodes;
  private final List<Beam> beams;

  /**
   * The rules for a frame.
   *
   * @param frame the frame
   * @param mayRise whether its nodes and arms may leave its plane
   */
  FrameRules(Frame frame, boolean mayRise) {
    this.frame = frame;
    this.mayRise = mayRise;
    nodes = frame.nodes();
    beams = frame.beams();
  }

  /** Refuses a frame that breaks a rule, by the part that is wrong. */
  void check() {
    refuseEmpty();
    refuseUnknownNodes();
    if (!mayRise) {
      nodes.forEach(this::refuseOffPlane);
      beams.forEach(this::refuseArms);
    }
    beams.forEach(this::refuseCoupled);
    refuseCoincident();
    beams.forEach(this::refuseUpright);
  }

  private void refuseEmpty() {
    if (beams.isEmpty()) {
      throw new ModelException("the frame has no beams");
    }
  }

  private void refuseUnknownNodes() {
    for (Beam beam : beams) {
      frame.node(beam.start());
      frame.node(beam.end());
    }
    frame.supports().forEach(support -> frame.node(support.node()));
  }

  private void refuseOffPlane(Node node) {
    double off = offPlane(node);
    if (Math.abs(off) > FLATNESS) {
      throw new ModelException(
          "node " + node.name() + " lies " + Scale.MM.show(off) + " out of the frame's plane");
    }
  }

  private double offPlane(Node node) {
    double level = frame.plane().toFrame(nodes.get(0).at())[2];
    return frame.plane().toFrame(node.at())[2] - level;
  }

  private double offPlane(End.Arm arm) {
    return frame.plane().toFrame(arm.x(), arm.y(), arm.z())[2];
  }

  /** Whether every node and every arm lies in the plane. */
  boolean liesFlat() {
    return nodes.stream().allMatch(node -> Math.abs(offPlane(node)) <= FLATNESS)
        && beams.stream()
            .flatMap(beam -> Stream.of(beam.atStart().arm(), beam.atEnd().arm()))
            .allMatch(arm -> Math.abs(offPlane(arm)) <= FLATNESS);
  }

  private void refuseUpright(Beam beam) {
    Point from = frame.startOf(beam);
    Point to = frame.endOf(beam);
    double[] run = frame.plane().toFrame(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
    if (Math.hypot(run[0], run[1]) < UPRIGHT * Math.abs(run[2])) {
      throw new ModelException(
          "beam %s runs along the normal of the frame's plane, so that nothing says how its section lies; let it lean, or choose another plane"
              .formatted(beam.name()));
    }
  }

  private void refuseCoupled(Beam beam) {
    beam.section()
        .unfitForFlatFrame()
        .ifPresent(
            reason -> {
              throw new ModelException("beam " + beam.name() + " cannot be used: " + reason);
            });
  }

  private void refuseArms(Beam beam) {
    refuseArm(beam, beam.atStart().arm(), beam.start());
    refuseArm(beam, beam.atEnd().arm(), beam.end());
  }

  private void refuseArm(Beam beam, End.Arm arm, String node) {
    double off = offPlane(arm);
    if (Math.abs(off) > FLATNESS) {
      throw new ModelException(
          "the rigid arm of beam %s at node %s leaves the frame's plane by %s; it would turn pulling into bending out of the plane, which a flat frame cannot follow; keep the arm in the plane"
              .formatted(beam.name(), node, Scale.MM.show(off)));
    }
  }

  private void refuseCoincident() {
    for (Beam beam : beams) {
      if (frame.length(beam) < FLATNESS) {
        throw new ModelException(
            "beam "
                + beam.name()
                + " is "
                + Scale.MM.show(frame.length(beam))
                + " long: its ends at nodes "
                + beam.start()
                + " and "
                + beam.end()
                + " are at the same place");
      }
    }
  }
}

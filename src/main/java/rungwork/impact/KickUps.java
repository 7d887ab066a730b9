package rungwork.impact;

import java.util.List;
import java.util.Optional;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.material.RatedMaterial;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

/** The falling branches of a ladder's kick-ups, one of its rails for each. */
final class KickUps {
  private final Ladder ladder;
  private final Frame frame;
  private final double strainRate;

  KickUps(Ladder ladder, double strainRate) {
    this.ladder = ladder;
    this.strainRate = strainRate;
    frame = ladder.frame(Joints.RIGID);
  }

  List<Collapse.KickUpFall> all() {
    return ladder.kickUps().stream().map(this::fall).toList();
  }

  private Collapse.KickUpFall fall(Ladder.KickUp kickUp) {
    Beam leg =
        frame.beams().stream()
            .filter(beam -> beam.name().startsWith("left rail "))
            .filter(beam -> within(kickUp, beam))
            .findFirst()
            .orElseThrow();
    RatedMaterial rated = (RatedMaterial) leg.material();
    double least = rated.strength().weldedYield() * (1 - TubeStrength.WALL_TOLERANCE);
    Optional<FoldingHinge> folding = FoldingHinge.of(leg.section(), least, rated.elasticity());
    return new Collapse.KickUpFall(
        kickUp,
        leg.section().name(),
        rail(kickUp, leg, CrushTube.Strength.LOW, folding).branch(),
        rail(kickUp, leg, CrushTube.Strength.HIGH, Optional.empty()).branch(),
        folding.map(FoldingHinge::tested));
  }

  private boolean within(Ladder.KickUp kickUp, Beam beam) {
    double middle = (frame.startOf(beam).x() + frame.endOf(beam).x()) / 2;
    return (middle - kickUp.foot()) * (middle - kickUp.head()) < 0;
  }

  /** Low: the head free to turn. High: held, so that two hinges must work. */
  private CrankedRail rail(
      Ladder.KickUp kickUp, Beam leg, CrushTube.Strength strength, Optional<FoldingHinge> folding) {
    return new CrankedRail(
        Math.abs(kickUp.head() - kickUp.foot()),
        Math.abs(kickUp.rise()),
        strength == CrushTube.Strength.LOW ? 1 : 2,
        new FrameStrength(strength, strainRate).apply(leg),
        folding);
  }
}

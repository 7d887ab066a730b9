package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A plate on a spreader on a tube. The spreader bends between its side welds as a tube's face does
 * between its walls (common practice, no source); on the tube it stands as a patch.
 *
 * @param above the plate on the spreader
 * @param below the spreader on the tube
 * @param thickness of the spreader [m]
 */
record SpreadFoot(PlateOnTube above, PlateOnTube below, double thickness) implements Joint {
  private static final double MOST = 1.5;

  static SpreadFoot of(PlateOnTube plate, PlateOnTube.Spreader spreader) {
    PlateOnTube.Foot foot = plate.foot();
    if (foot.way() == PlateOnTube.Way.THROUGH || foot.way() == PlateOnTube.Way.PATCH) {
      throw new ModelException(
          "a spreader goes under a plate along or across the tube; "
              + plate.name()
              + " is neither");
    }
    boolean along = foot.way() == PlateOnTube.Way.LONGITUDINAL;
    double across = along ? spreader.width() : spreader.length();
    TubeWall face =
        new TubeWall(spreader.material(), across, plate.tube().depth(), spreader.thickness());
    PlateOnTube.Foot patch =
        new PlateOnTube.Foot(
            PlateOnTube.Way.PATCH, spreader.length(), spreader.width(), foot.offset());
    String name = plate.name();
    PlateOnTube.Foot central = new PlateOnTube.Foot(foot.way(), foot.length(), foot.thickness(), 0);
    return new SpreadFoot(
        PlateOnTube.of(name + " on its spreader", face, central),
        new PlateOnTube(name + ", spreader", plate.tube(), patch, plate.chordStress()),
        spreader.thickness());
  }

  @Override
  public String name() {
    return below.name();
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = new ArrayList<>(above.checks(load));
    checks.addAll(below.checks(load));
    Question question =
        Question.of("spreader's thickness", name(), load)
            .with(
                "A spreader much thicker than the wall moves the crack to its own edge; "
                    + Scale.NUMBER.number(MOST, 2)
                    + " times the wall is the usual most.");
    checks.add(
        HoleRules.limit(
                List.of(), thickness, MOST * below.tube().wall(), "common practice, no source")
            .answers(question));
    return checks;
  }
}

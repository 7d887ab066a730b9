package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.material.RatedMaterial;
import rungwork.section.Section;
import rungwork.section.Wall.Edge;

/** What can stay unchecked of a member of closed section, whatever it carries. */
final class TubeDoubts {
  private TubeDoubts() {}

  static List<String> of(Member member, Section section, RatedMaterial material) {
    Optional<String> outside = SteelRange.of(material);
    if (outside.isPresent()) {
      return List.of("columns, walls and lateral-torsional buckling: " + outside.get());
    }
    List<String> doubts = new ArrayList<>();
    if (LateralTorsionalBuckling.isLong(member, section, material)) {
      doubts.add(
          LateralTorsionalBuckling.WHAT + ": the tube is so long that it could escape sideways");
    }
    double yield = material.strength().yield();
    if (section.walls().stream()
        .anyMatch(wall -> wall.edge() == Edge.ROUND && WallLimits.classOf(wall, yield) == 4)) {
      doubts.add(WallSlenderness.WHAT + ": a round wall of class 4");
    }
    return doubts;
  }
}

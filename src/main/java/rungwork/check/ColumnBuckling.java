package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Verdict.Measured;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Properties;
import rungwork.section.Torsion;

/** Buckling of a compressed member, together with its bending. Asked only under compression. */
final class ColumnBuckling implements Question {
  private static final String SOURCE =
      "EN 1993-1-1:2005, 6.3.1 and 6.3.3 with annex B; curve c, elastic moduli, Cm = 1";

  /**
   * A section does not say how it was made, so that a hot-finished or a welded tube is taken as
   * cold-formed, which is on the safe side; channels and solid bars are on this curve too.
   */
  private static final ColumnCurve CURVE = ColumnCurve.C;

  @Override
  public String what() {
    return "column buckling with bending";
  }

  @Override
  public LimitState limitState() {
    return LimitState.YIELD;
  }

  @Override
  public boolean arises(LoadedMember member) {
    double area = member.stock().section().properties().area();
    return member.largest(forces -> -forces.n()) > area * member.negligibleStress();
  }

  @Override
  public List<Finding> ask(LoadedMember member, RatedMaterial material) {
    Finding found = buckling(member, material.strength().yield());
    return List.of(
        outside(member.stock().section().torsion(), material).map(found::outside).orElse(found));
  }

  private Finding buckling(LoadedMember member, double yield) {
    BendingAxis strong = BendingAxis.strong(member.whole().properties());
    BeamColumn beamColumn =
        new BeamColumn(
            member.largest(forces -> -forces.n()),
            yield,
            member.factor().value(),
            bent(member, strong, Column.Axis.STRONG),
            bent(member, strong.other(), Column.Axis.WEAK));
    List<Step> working = new ArrayList<>(beamColumn.working());
    double utilisation = working.get(working.size() - 1).result();
    working.add(beamColumn.slender().johnson(yield));
    return new Finding(
        what(),
        "whole part; strong axis: bending %s; effective lengths: %s"
            .formatted(strong.bends(), member.member().buckling().reason()),
        new Measured(utilisation, 1, Kind.RATIO),
        working,
        SOURCE);
  }

  private static BeamColumn.Bent bent(LoadedMember member, BendingAxis axis, Column.Axis letters) {
    Properties section = member.stock().section().properties();
    Column column =
        new Column(
            member.stock().material().elasticity().youngsModulus(),
            section.area(),
            axis.secondMoment(member.whole().properties()),
            axis.length(member.member().buckling()),
            letters);
    return new BeamColumn.Bent(
        column,
        CURVE,
        member.largest(forces -> Math.abs(axis.moment(forces))),
        axis.modulus(section));
  }

  private static Optional<String> outside(Torsion torsion, RatedMaterial material) {
    return switch (torsion) {
      case CLOSED -> SteelRange.of(material);
      case OPEN ->
          Optional.of(
              "an open section can also buckle by twisting (EN 1993-1-1:2005, 6.3.1.4), which is"
                  + " not checked; only buckling by bending is shown");
      case SOLID ->
          Optional.of(
              "the moment factors of EN 1993-1-1:2005, annex B, are for hollow and I-sections, not"
                  + " for solid bars");
    };
  }
}

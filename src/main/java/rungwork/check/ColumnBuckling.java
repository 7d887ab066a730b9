package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Verdict.Measured;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Properties;
import rungwork.section.Torsion;

/**
 * Buckling of a compressed member of a closed section or a solid bar, together with its bending.
 * Asked only under compression; open sections have {@link OpenColumn}.
 */
final class ColumnBuckling implements Question {
  static final String WHAT = "column buckling with bending";

  private static final String SOURCE =
      "EN 1993-1-1:2005, 6.3.1 and 6.3.3 with annex B; curve c, elastic moduli, Cm = 1";

  /**
   * A section does not say how it was made, so that a hot-finished or a welded tube is taken as
   * cold-formed, which is on the safe side; solid bars are on this curve too.
   */
  static final ColumnCurve CURVE = ColumnCurve.C;

  @Override
  public String what() {
    return WHAT;
  }

  @Override
  public LimitState limitState() {
    return LimitState.YIELD;
  }

  @Override
  public boolean arises(LoadedMember member) {
    return member.stock().section().torsion() != Torsion.OPEN && compressed(member);
  }

  /** Whether a member is compressed at all. */
  static boolean compressed(LoadedMember member) {
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
    return new BeamColumn.Bent(
        column(member, axis, letters),
        CURVE,
        member.largest(forces -> Math.abs(axis.moment(forces))),
        axis.modulus(section));
  }

  /** The column that bends about an axis. */
  static Column column(LoadedMember member, BendingAxis axis, Column.Axis letters) {
    return new Column(
        member.stock().material().elasticity().youngsModulus(),
        member.stock().section().properties().area(),
        axis.secondMoment(member.whole().properties()),
        axis.length(member.member().buckling()),
        letters);
  }

  private static Optional<String> outside(Torsion torsion, RatedMaterial material) {
    return switch (torsion) {
      case CLOSED, OPEN -> SteelRange.of(material);
      case SOLID ->
          Optional.of(
              "the moment factors of EN 1993-1-1:2005, annex B, are for hollow and I-sections, not"
                  + " for solid bars");
    };
  }
}

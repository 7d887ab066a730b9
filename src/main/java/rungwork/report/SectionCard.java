package rungwork.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.Material;
import rungwork.quantity.Quantities;
import rungwork.quantity.Units;
import rungwork.section.Outline;
import rungwork.section.Section;
import rungwork.section.Torsion;

/** Cards of sections to look at: one in its material, or two side by side. */
public final class SectionCard {
  /** A card that also says in plain text what it shows. */
  private record Card(Function<Units, Page> maker) implements Shown {
    @Override
    public Page page(Units units) {
      return maker.apply(units);
    }

    @Override
    public String toString() {
      return page(Units.METRIC).text();
    }
  }

  private SectionCard() {}

  /**
   * A section in a material: drawn to scale, with its properties, its stress points, the mass of a
   * metre and the class of its walls.
   *
   * @param section what to show
   * @param material what it is made of
   * @return the card
   */
  public static Shown of(Section section, Material material) {
    return new Card(units -> SectionPage.of(section, Optional.of(material), units));
  }

  /**
   * Two sections side by side, to one scale, with the ratio of each property: whether to box a
   * channel, at a glance. Torsion is that of ends free to warp.
   *
   * @param first what there is
   * @param second what it might become
   * @return the card
   */
  public static Shown beside(Section first, Section second) {
    return new Card(units -> RatioPage.of(first, second, List.of(), units));
  }

  /**
   * The same, with the other bound of torsion beside it: a bay whose ends hold the warping.
   *
   * @param first what there is
   * @param second what it might become
   * @param bay from end to end
   * @return the card
   */
  public static Shown beside(Section first, Section second, Quantity<Length> bay) {
    double length =
        Guard.positive("length of a bay", Quantities.si("length of a bay", bay), Scale.MM);
    refuseUnknownWarping(first);
    refuseUnknownWarping(second);
    return new Card(
        units -> RatioPage.of(first, second, List.of(Trait.held(length, units)), units));
  }

  /**
   * What an axial force leaves of a section's plastic moments: the exact curve of its outline about
   * both axes, for tubes the standard's beside it and how far it errs.
   *
   * @param section a section with its outline
   * @return the card
   */
  public static Shown withAxialForce(Section section) {
    Outline.Moduli known = new Outline.Moduli(section);
    return new Card(units -> AxialForcePage.of(known.section(), units));
  }

  private static void refuseUnknownWarping(Section section) {
    double constant = section.properties().iw() + section.properties().iwAcross();
    if (section.torsion() == Torsion.OPEN && !(constant > 0)) {
      throw new ModelException(
          section.name()
              + " is open and its warping constant is not known; compare it with free ends only");
    }
  }
}

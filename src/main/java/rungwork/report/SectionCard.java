package rungwork.report;

import java.util.Optional;
import rungwork.material.Material;
import rungwork.section.Section;

/** Cards of sections to look at: one in its material, or two side by side. */
public final class SectionCard {
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
    return units -> SectionPage.of(section, Optional.of(material), units);
  }

  /**
   * Two sections side by side, to one scale, with the ratio of each property: whether to box a
   * channel, at a glance.
   *
   * @param first what there is
   * @param second what it might become
   * @return the card
   */
  public static Shown beside(Section first, Section second) {
    return units -> RatioPage.of(first, second, units);
  }
}

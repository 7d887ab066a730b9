package rungwork.report;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.check.Member.Ends;
import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;

/**
 * What sections are compared by.
 *
 * @param words in words
 * @param letter its symbol
 * @param kind what it measures
 * @param value of a section [SI]
 */
record Trait(String words, String letter, Kind kind, ToDoubleFunction<Section> value) {
  private static final Material STEEL = Material.named("S235JR");

  static final Trait MASS =
      new Trait(
          "mass of a length, steel",
          "m",
          Kind.MASS_PER_LENGTH,
          section -> section.properties().area() * SectionPage.STEEL);
  static final Trait UPRIGHT_STIFFNESS =
      new Trait("stiff upright", "Iy", Kind.SECOND_MOMENT, section -> section.properties().iy());
  static final Trait SIDEWAYS_STIFFNESS =
      new Trait("stiff sideways", "Iz", Kind.SECOND_MOMENT, section -> section.properties().iz());
  static final Trait UPRIGHT_STRENGTH =
      new Trait(
          "strong upright",
          "Wel,y",
          Kind.SECTION_MODULUS,
          section -> section.net().map(Section.Net::wely).orElse(section.properties().wely()));
  static final Trait SIDEWAYS_STRENGTH =
      new Trait(
          "strong sideways",
          "Wel,z",
          Kind.SECTION_MODULUS,
          section -> section.net().map(Section.Net::welz).orElse(section.properties().welz()));
  static final Trait TWIST_STIFFNESS =
      new Trait(
          "stiff in twist, free to warp",
          "It",
          Kind.SECOND_MOMENT,
          section -> section.properties().it());
  static final Trait TWIST_STRENGTH =
      new Trait(
          "strong in twist, free to warp", "Wt", Kind.SECTION_MODULUS, Section::torsionModulus);

  static final List<Trait> ALL =
      List.of(
          MASS,
          UPRIGHT_STIFFNESS,
          SIDEWAYS_STIFFNESS,
          UPRIGHT_STRENGTH,
          SIDEWAYS_STRENGTH,
          TWIST_STIFFNESS,
          TWIST_STRENGTH);

  /**
   * Stiffness in twist of a bay of steel whose ends hold the warping, as the torsion constant that
   * a bay with free ends would need; of a closed or solid section its own.
   *
   * @param bay from end to end [m]
   * @param units the reader's units
   */
  static Trait held(double bay, Units units) {
    String words =
        "stiff in twist, ends held over "
            + Numbers.dimension(bay, units)
            + " "
            + units.scale(Kind.LENGTH).unit();
    return new Trait(
        words,
        "It,h",
        Kind.SECOND_MOMENT,
        section ->
            Ends.BOTH_HELD
                .stiffened(new Stock(section, STEEL), bay)
                .section()
                .properties()
                .twistConstant());
  }

  /** What a comparison says of drilled sections, if there are any. */
  static Optional<String> drilled(List<Section> sections) {
    List<String> names =
        sections.stream().filter(s -> s.net().isPresent()).map(Section::name).distinct().toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "drilled, so its strength is that of the net section beside the hole; its stiffness and"
                + " the mass of a length are those of the whole: "
                + String.join(", ", names));
  }

  double of(Section section) {
    return value.applyAsDouble(section);
  }

  double ratio(Section first, Section second) {
    return of(second) / of(first);
  }

  String show(Section section, Units units) {
    return units.show(kind, of(section));
  }
}

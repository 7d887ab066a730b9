package rungwork.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Quantities;
import rungwork.quantity.SecondMoment;
import rungwork.quantity.SectionModulus;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.section.SizeTable;
import rungwork.section.Spot;

/**
 * Sections from tables and own lists, narrowed down by what they must be or have; the lightest
 * first. It looks at sizes only: no load, no material, nothing is checked. All are taken as of one
 * material, so that equal area is equal mass. Immutable.
 *
 * @param sections those left, the lightest first, equal ones by name
 * @param conditions what was asked so far
 * @param looked how many sections were looked at
 */
public record Shortlist(List<Section> sections, List<Condition> conditions, int looked) {
  /**
   * What was asked.
   *
   * @param words in words, the limit left out
   * @param kind what the limit measures
   * @param limit the limit [SI]
   */
  public record Condition(String words, Kind kind, double limit) {
    /** Refuses a limit that is not finite. */
    public Condition {
      Guard.finite(words, limit);
    }

    /**
     * The condition in the reader's units.
     *
     * @param units the reader's units
     * @return for example {@code Wel,y at least 8.000 cm³}
     */
    public String line(Units units) {
      return kind == Kind.RATIO
          ? words + " " + Scale.NUMBER.number(100 * limit, 2) + " %"
          : words + " " + units.show(kind, limit);
    }
  }

  private static final Comparator<Section> LIGHTEST_FIRST =
      Comparator.comparingDouble((Section section) -> section.properties().area())
          .thenComparing(Section::name);

  /** A figure that equals its limit but for rounding meets it. */
  private static final double ROUNDING = 1e-9;

  /** Copies its lists. */
  public Shortlist {
    sections = List.copyOf(sections);
    conditions = List.copyOf(conditions);
  }

  /**
   * All sections of some tables.
   *
   * @param tables where to look
   * @return all of their sections
   */
  public static Shortlist of(SizeTable... tables) {
    return of(Arrays.stream(tables).flatMap(table -> table.sections().stream()).toList());
  }

  /**
   * All sections of an own list.
   *
   * @param own the sections
   * @return all of them, the lightest first
   */
  public static Shortlist of(List<Section> own) {
    if (own.isEmpty()) {
      throw new ModelException("there is no section to choose from; give one at least");
    }
    return new Shortlist(own.stream().sorted(LIGHTEST_FIRST).toList(), List.of(), own.size());
  }

  /**
   * These and others, which meet nothing that was asked so far: so only before the first condition.
   *
   * @param own more sections
   * @return all of them
   */
  public Shortlist and(List<Section> own) {
    if (!conditions.isEmpty()) {
      throw new ModelException(
          "sections cannot join a list that was narrowed down already (%s); add them first"
              .formatted(asked(Units.METRIC)));
    }
    List<Section> all = new ArrayList<>(sections);
    all.addAll(own);
    return of(all);
  }

  /**
   * Those as heavy as another section.
   *
   * @param reference the other section
   * @param within how far the mass may differ, as a part of it, such as 0.05
   * @return those left
   */
  public Shortlist asHeavyAs(Section reference, double within) {
    double area = reference.properties().area();
    double part = Guard.notNegative("difference of mass", within, Scale.NUMBER);
    return kept(
        section -> Math.abs(section.properties().area() / area - 1) <= part + ROUNDING,
        new Condition("as heavy as " + reference.name() + " within", Kind.RATIO, part));
  }

  /**
   * Those as deep as another section; one without an outline has no known depth and falls away.
   *
   * @param reference the other section
   * @param within how far the depth may differ
   * @return those left
   */
  public Shortlist asDeepAs(Section reference, Quantity<Length> within) {
    double wanted =
        depth(reference)
            .orElseThrow(
                () -> new ModelException("the depth of " + reference.name() + " is not known"));
    double margin =
        Guard.notNegative(
            "difference of depth", Quantities.si("difference of depth", within), Scale.MM);
    return kept(
        section -> depth(section).stream().anyMatch(d -> Math.abs(d - wanted) <= margin + ROUNDING),
        new Condition("as deep as " + reference.name() + " within", Kind.LENGTH, margin));
  }

  /**
   * Those with an elastic modulus about the horizontal axis of at least this.
   *
   * @param least Wel,y
   * @return those left
   */
  public Shortlist modulusAtLeast(Quantity<SectionModulus> least) {
    double w = Quantities.si("least section modulus", least);
    return kept(
        section -> section.properties().wely() >= w * (1 - ROUNDING),
        new Condition("Wel,y at least", Kind.SECTION_MODULUS, w));
  }

  /**
   * Those with a second moment about the horizontal axis of at least this.
   *
   * @param least Iy
   * @return those left
   */
  public Shortlist secondMomentAtLeast(Quantity<SecondMoment> least) {
    double i = Quantities.si("least second moment", least);
    return kept(
        section -> section.properties().iy() >= i * (1 - ROUNDING),
        new Condition("Iy at least", Kind.SECOND_MOMENT, i));
  }

  /**
   * Those with a torsion constant, free to warp, of at least this.
   *
   * @param least It
   * @return those left
   */
  public Shortlist torsionConstantAtLeast(Quantity<SecondMoment> least) {
    double it = Quantities.si("least torsion constant", least);
    return kept(
        section -> section.properties().it() >= it * (1 - ROUNDING),
        new Condition("It at least", Kind.SECOND_MOMENT, it));
  }

  /**
   * The lightest of those left.
   *
   * @return it, or nothing when none is left
   */
  public Optional<Section> lightest() {
    return sections.stream().findFirst();
  }

  private Shortlist kept(Predicate<Section> meets, Condition condition) {
    List<Condition> all = new ArrayList<>(conditions);
    all.add(condition);
    return new Shortlist(sections.stream().filter(meets).toList(), all, looked);
  }

  /** From its lowest to its highest fibre [m]; nothing without an outline. */
  private static OptionalDouble depth(Section section) {
    double[] heights =
        section.outline().loops().stream()
            .flatMap(List::stream)
            .flatMap(piece -> piece.reaches().stream())
            .mapToDouble(Spot::z)
            .sorted()
            .toArray();
    return heights.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(heights[heights.length - 1] - heights[0]);
  }

  /**
   * What was asked, and how many of those looked at meet it.
   *
   * @param units the reader's units
   * @return one line
   */
  public String line(Units units) {
    String asked = conditions.isEmpty() ? "" : ": " + asked(units);
    return sections.size() + " of " + looked + " sections" + asked;
  }

  private String asked(Units units) {
    return String.join("; ", conditions.stream().map(one -> one.line(units)).toList());
  }

  @Override
  public String toString() {
    return line(Units.METRIC)
        + "\n"
        + String.join("\n", sections.stream().map(Section::toString).toList());
  }
}

package rungwork.section;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.fault.Scale;
import rungwork.section.SizeTable.Printed;

/**
 * What tables print beside dimensions, each with the value that is computed by the same convention.
 * A column is named by the letter and its unit, such as {@code wely_cm3}.
 */
enum SizeProperty {
  /** Of steel of 7850 kg/m³, as the European tables take it. */
  MASS("mass", section -> 7850 * section.properties().area()),
  AREA("A", section -> section.properties().area()),
  IY("Iy", section -> section.properties().iy()),
  IZ("Iz", section -> section.properties().iz()),
  RY("iy", section -> Math.sqrt(section.properties().iy() / section.properties().area())),
  RZ("iz", section -> Math.sqrt(section.properties().iz() / section.properties().area())),
  WELY("Wel,y", section -> section.properties().wely()),
  WELZ("Wel,z", section -> section.properties().welz()),
  WPLY("Wpl,y", section -> section.properties().wply()),
  WPLZ("Wpl,z", section -> section.properties().wplz()),
  /** First moment of half the section: half the plastic modulus. */
  SY("Sy", section -> section.properties().wply() / 2),
  IT("It", section -> section.properties().it()),
  /** Of one closed cell of one thickness, by Bredt alone: without a third of b·t³. */
  ITBREDT("J", SizeProperty::bredt),
  /** Torque for a unit of the greatest stress. */
  CT("Ct", SizeProperty::torsionModulus),
  /** From the back of a channel's web to the centroid. */
  EY("ey", SizeProperty::behindCentroid),
  /** From a channel's centroid to its shear centre. */
  YM("yM", section -> -section.properties().shearCentreY()),
  /** From the back of a channel's web to its shear centre. */
  EO("eo", section -> -section.properties().shearCentreY() - behindCentroid(section));

  private static final double INCH = 0.0254;
  private static final double POUND_PER_FOOT = 0.45359237 / (12 * INCH);

  private static final Map<String, Scale> UNITS =
      Map.ofEntries(
          Map.entry("kg_m", new Scale("kg/m", 1)),
          Map.entry("lb_ft", new Scale("lb/ft", POUND_PER_FOOT)),
          Map.entry("cm", new Scale("cm", 1e-2)),
          Map.entry("cm2", new Scale("cm²", 1e-4)),
          Map.entry("cm3", new Scale("cm³", 1e-6)),
          Map.entry("cm4", new Scale("cm⁴", 1e-8)),
          Map.entry("in", new Scale("in", INCH)),
          Map.entry("in2", new Scale("in²", Math.pow(INCH, 2))),
          Map.entry("in3", new Scale("in³", Math.pow(INCH, 3))),
          Map.entry("in4", new Scale("in⁴", Math.pow(INCH, 4))));

  private final String letter;
  private final ToDoubleFunction<Section> computed;

  SizeProperty(String letter, ToDoubleFunction<Section> computed) {
    this.letter = letter;
    this.computed = computed;
  }

  /** The property that a column holds, if it holds one. */
  static Optional<SizeProperty> of(String column) {
    return Arrays.stream(values())
        .filter(property -> column.startsWith(property.stem()))
        .filter(property -> UNITS.containsKey(column.substring(property.stem().length())))
        .findAny();
  }

  private String stem() {
    return name().toLowerCase(Locale.ROOT) + "_";
  }

  /** What the column prints, beside the section's own value. */
  Printed printed(String column, String digits, Section section) {
    Scale scale = UNITS.get(column.substring(stem().length()));
    return new Printed(letter, scale, digits, computed.applyAsDouble(section));
  }

  private static double bredt(Section section) {
    double wall = section.walls().get(0).thickness();
    return section.properties().it() - section.properties().area() * wall * wall / 3;
  }

  private static double torsionModulus(Section section) {
    return 1 / section.points().stream().mapToDouble(p -> Math.abs(p.perT())).max().orElseThrow();
  }

  private static double behindCentroid(Section section) {
    return -section.points().stream().mapToDouble(StressPoint::y).min().orElseThrow();
  }
}

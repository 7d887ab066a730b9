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
  /** About the strong principal axis. */
  IU("Iu", section -> section.properties().strongest()),
  /** About the weak principal axis. */
  IV("Iv", section -> section.properties().weakest()),
  RU("iu", section -> Math.sqrt(section.properties().strongest() / section.properties().area())),
  RV("iv", section -> Math.sqrt(section.properties().weakest() / section.properties().area())),
  /** Of the angle between a principal axis and the nearer one of y and z. */
  TAN("tan α", SizeProperty::lean),
  /** First moment of half the section: half the plastic modulus. */
  SY("Sy", section -> section.properties().wply() / 2),
  IT("It", section -> section.properties().it()),
  /** Of one closed cell of one thickness, by Bredt alone: without a third of b·t³. */
  ITBREDT("J", SizeProperty::bredt),
  /** Torque for a unit of the greatest stress. */
  CT("Ct", Section::torsionModulus),
  IW("Iw", section -> section.properties().iw() + section.properties().iwAcross()),
  /** Of a channel as if its flanges were parallel, as American tables take them. */
  IWPARALLEL("Cw", SizeProperty::warpingOfParallelFlanges),
  /** From the back of a channel's web, or of an angle's upright leg, to the centroid. */
  EY("ey", SizeProperty::behindCentroid),
  /** From an angle's lower edge to the centroid. */
  EZ("ez", section -> -section.points().stream().mapToDouble(StressPoint::z).min().orElseThrow()),
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
          Map.entry("1", Scale.NUMBER),
          Map.entry("cm", new Scale("cm", 1e-2)),
          Map.entry("cm2", new Scale("cm²", 1e-4)),
          Map.entry("cm3", new Scale("cm³", 1e-6)),
          Map.entry("cm4", new Scale("cm⁴", 1e-8)),
          Map.entry("cm6", new Scale("cm⁶", 1e-12)),
          Map.entry("in", new Scale("in", INCH)),
          Map.entry("in2", new Scale("in²", Math.pow(INCH, 2))),
          Map.entry("in3", new Scale("in³", Math.pow(INCH, 3))),
          Map.entry("in4", new Scale("in⁴", Math.pow(INCH, 4))),
          Map.entry("in6", new Scale("in⁶", Math.pow(INCH, 6))));

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

  private static double warpingOfParallelFlanges(Section channel) {
    Wall flange = channel.walls().get(0);
    Wall web = channel.walls().get(1);
    RolledWalls parallel = new RolledWalls(web.thickness(), flange.thickness(), 0);
    double depth = 2 * channel.outline().reach(Spot::z);
    double width = flange.from().y() + behindCentroid(channel);
    return new RolledChannel(depth, width, parallel).shape().section().properties().iw();
  }

  private static double lean(Section section) {
    double angle = Math.abs(section.properties().principalAngle());
    return Math.tan(Math.min(angle, Math.PI / 2 - angle));
  }

  private static double behindCentroid(Section section) {
    return -section.points().stream().mapToDouble(StressPoint::y).min().orElseThrow();
  }
}

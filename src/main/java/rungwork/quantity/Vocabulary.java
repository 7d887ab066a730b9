package rungwork.quantity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;

/** The units that can be read, each with its maker, and the other ways that people spell them. */
final class Vocabulary {
  private static final Map<String, DoubleFunction<Quantity<?>>> MAKERS = makers();

  private static final Map<String, String> OTHER_SPELLINGS =
      Map.ofEntries(
          Map.entry("\"", "in"),
          Map.entry("″", "in"),
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("'", "ft"),
          Map.entry("′", "ft"),
          Map.entry("feet", "ft"),
          Map.entry("lbs", "lb"),
          Map.entry("kips", "kip"),
          Map.entry("Nm", "N·m"),
          Map.entry("kNm", "kN·m"),
          Map.entry("lbft", "lbf·ft"),
          Map.entry("lbfft", "lbf·ft"),
          Map.entry("lbfin", "lbf·in"),
          Map.entry("N/mm²", "MPa"),
          Map.entry("kN/mm²", "GPa"),
          Map.entry("kgm²", "kg·m²"),
          Map.entry("kmh", "km/h"),
          Map.entry("km/hr", "km/h"),
          Map.entry("kph", "km/h"),
          Map.entry("°", "deg"),
          Map.entry("Nm/deg", "N·m/deg"),
          Map.entry("N·m/°", "N·m/deg"),
          Map.entry("Nm/rad", "N·m/rad"),
          Map.entry("lbft/deg", "lbf·ft/deg"));

  private Vocabulary() {}

  /** The maker for a unit in any known spelling. */
  static Optional<DoubleFunction<Quantity<?>>> maker(String unit) {
    String plain =
        unit.replaceAll("[ ^]", "")
            .replace('*', '·')
            .replaceAll("2$", "²")
            .replaceAll("3$", "³")
            .replaceAll("4$", "⁴");
    return Optional.ofNullable(MAKERS.get(OTHER_SPELLINGS.getOrDefault(plain, plain)));
  }

  /** The units in their first spelling, in the order of kinds. */
  static Set<String> known() {
    return MAKERS.keySet();
  }

  private static Map<String, DoubleFunction<Quantity<?>>> makers() {
    Map<String, DoubleFunction<Quantity<?>>> map = new LinkedHashMap<>();
    addGeometry(map);
    addStatics(map);
    addMotion(map);
    return Collections.unmodifiableMap(map);
  }

  private static void addGeometry(Map<String, DoubleFunction<Quantity<?>>> map) {
    map.put("mm", Quantities::mm);
    map.put("cm", Quantities::cm);
    map.put("m", Quantities::m);
    map.put("in", Quantities::inch);
    map.put("ft", Quantities::ft);
    map.put("mm²", Quantities::mm2);
    map.put("cm²", Quantities::cm2);
    map.put("mm³", Quantities::mm3);
    map.put("cm³", Quantities::cm3);
    map.put("mm⁴", Quantities::mm4);
    map.put("cm⁴", Quantities::cm4);
  }

  private static void addStatics(Map<String, DoubleFunction<Quantity<?>>> map) {
    map.put("N", Quantities::N);
    map.put("kN", Quantities::kN);
    map.put("lbf", Quantities::lbf);
    map.put("kip", Quantities::kip);
    map.put("N·m", Quantities::Nm);
    map.put("kN·m", Quantities::kNm);
    map.put("lbf·ft", Quantities::lbft);
    map.put("lbf·in", Quantities::lbin);
    map.put("N/m", Quantities::Npm);
    map.put("kN/m", Quantities::kNpm);
    map.put("lbf/ft", Quantities::lbfpft);
    map.put("MPa", Quantities::MPa);
    map.put("GPa", Quantities::GPa);
    map.put("ksi", Quantities::ksi);
    map.put("psi", Quantities::psi);
    map.put("N/mm", Quantities::Npmm);
    map.put("kN/mm", Quantities::kNpmm);
    map.put("lbf/in", Quantities::lbfpin);
    map.put("N·m/deg", Quantities::Nmpdeg);
    map.put("N·m/rad", Quantities::Nmprad);
    map.put("lbf·ft/deg", Quantities::lbftpdeg);
  }

  private static void addMotion(Map<String, DoubleFunction<Quantity<?>>> map) {
    map.put("kg", Quantities::kg);
    map.put("lb", Quantities::lb);
    map.put("kg/m³", Quantities::kgpm3);
    map.put("kg·m²", Quantities::kgm2);
    map.put("g", Quantities::g);
    map.put("m/s²", Quantities::mps2);
    map.put("km/h", Quantities::kmh);
    map.put("mph", Quantities::mph);
    map.put("m/s", Quantities::mps);
    map.put("J", Quantities::J);
    map.put("kJ", Quantities::kJ);
    map.put("ms", Quantities::ms);
    map.put("s", Quantities::s);
    map.put("deg", Quantities::deg);
    map.put("rad", Quantities::rad);
  }
}

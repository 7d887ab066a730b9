package rungwork.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.quantity.Quantities;

/**
 * A size as a person writes it: letters, then numbers with crosses between them.
 *
 * @param letters before the numbers, such as {@code upe}; empty for none
 * @param numbers the sizes in the table's unit, or in mm or inches where one is stated
 * @param unit {@code mm}, {@code in} or empty
 */
record SizeName(String letters, List<Double> numbers, String unit) {
  private static final double INCH = 25.4;

  /** Two figures nearer than this part of themselves are one: 0.1875 and 0.188. */
  private static final double SAME = 3e-3;

  /** How many near sizes a refusal names. */
  private static final int NEAR = 3;

  /** The one of several names that is meant; capitals, blanks, commas and hyphens do not matter. */
  static String choose(String what, String name, List<String> names) {
    String wanted = plain(Guard.name(what, name));
    return names.stream()
        .filter(known -> plain(known).equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    "there is no "
                        + what
                        + " "
                        + name.strip()
                        + "; did you mean "
                        + likest(name, names)
                        + "? There are "
                        + String.join(", ", names)));
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s,'’-]", "");
  }

  /** The name with which a wanted one shares the most pairs of letters. */
  private static String likest(String wanted, List<String> names) {
    Set<String> pairs = pairs(wanted);
    return names.stream()
        .max(
            Comparator.comparingDouble(
                name -> {
                  long shared = pairs(name).stream().filter(pairs::contains).count();
                  return (double) shared / (pairs.size() + pairs(name).size());
                }))
        .orElseThrow();
  }

  private static Set<String> pairs(String name) {
    String letters = plain(name);
    return IntStream.range(0, Math.max(0, letters.length() - 1))
        .mapToObj(i -> letters.substring(i, i + 2))
        .collect(Collectors.toSet());
  }

  /** The size of a table that is meant. */
  static SizeTable.Size find(String text, SizeTable table) {
    Optional<SizeName> wanted = read(Guard.name("size", text));
    return table.sizes().stream()
        .filter(size -> size.name().equalsIgnoreCase(text.strip()) || means(wanted, size))
        .findFirst()
        .orElseThrow(() -> refusal(text.strip(), wanted, table));
  }

  private static boolean means(Optional<SizeName> wanted, SizeTable.Size size) {
    return wanted.flatMap(name -> of(size).filter(name::means)).isPresent();
  }

  private static Optional<SizeName> of(SizeTable.Size size) {
    return read(size.name()).map(name -> name.in(size.section().name().endsWith(" in")));
  }

  private SizeName in(boolean inches) {
    return new SizeName(letters, numbers, inches ? "in" : "mm");
  }

  private static Optional<SizeName> read(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT).replace('×', 'x').replaceAll("[\"″”]", "");
    String unit = plain.endsWith("mm") ? "mm" : plain.matches(".*\\d\\s*in(ch)?") ? "in" : "";
    String bare = plain.replaceAll("\\s*(mm|inch|in)\\s*(?=x|$)", "").replaceAll("\\s*x\\s*", "x");
    String letters = bare.replaceAll("^([a-z]*).*", "$1");
    try {
      List<Double> numbers =
          Arrays.stream(bare.substring(letters.length()).strip().split("x"))
              .map(part -> Quantities.inch(part).getValue().doubleValue() / INCH)
              .toList();
      return Optional.of(new SizeName(letters, numbers, unit));
    } catch (ModelException notNumbers) {
      return Optional.empty();
    }
  }

  /** Whether this, as wanted, means a table's size; a square one may be given by one side. */
  private boolean means(SizeName size) {
    boolean letter = letters.isEmpty() || letters.equals(size.letters);
    return letter && (same(inUnitOf(size), size.numbers) || same(inUnitOf(size), size.oneSide()));
  }

  /** A square tube's one side and wall; nothing else has fewer numbers. */
  private List<Double> oneSide() {
    boolean square = numbers.size() == 3 && numbers.get(0).equals(numbers.get(1));
    return square ? numbers.subList(1, 3) : numbers;
  }

  private List<Double> inUnitOf(SizeName size) {
    double factor =
        unit.isEmpty() || unit.equals(size.unit) ? 1 : unit.equals("in") ? INCH : 1 / INCH;
    return numbers.stream().map(number -> number * factor).toList();
  }

  private static boolean same(List<Double> a, List<Double> b) {
    return a.size() == b.size() && distance(a, b) < SAME;
  }

  /** The sum of the figures' ratios as logarithms; infinite for different counts. */
  private static double distance(List<Double> a, List<Double> b) {
    double sum = a.size() == b.size() ? 0 : Double.POSITIVE_INFINITY;
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      sum += Math.abs(Math.log(a.get(i) / b.get(i)));
    }
    return sum;
  }

  private static ModelException refusal(String text, Optional<SizeName> wanted, SizeTable table) {
    String none = table.name() + " has no size " + text;
    Optional<SizeTable.Size> turned =
        table.sizes().stream().filter(size -> means(wanted.map(SizeName::laid), size)).findFirst();
    if (turned.isPresent()) {
      return new ModelException(
          none + "; it has " + turned.get().name() + ", which turned() lays on its side");
    }
    List<String> near = wanted.map(name -> near(name, table)).orElse(List.of());
    String help =
        near.isEmpty()
            ? "; its sizes are written like " + table.sizes().get(0).name()
            : "; nearest are " + String.join(", ", near);
    return new ModelException(none + help);
  }

  private SizeName laid() {
    if (numbers.size() < 2) {
      return this;
    }
    List<Double> swapped = new ArrayList<>(numbers);
    Collections.swap(swapped, 0, 1);
    return new SizeName(letters, swapped, unit);
  }

  private static List<String> near(SizeName wanted, SizeTable table) {
    record Near(String name, double distance) {}
    return table.sizes().stream()
        .flatMap(size -> of(size).map(name -> new Near(size.name(), wanted.to(name))).stream())
        .filter(near -> Double.isFinite(near.distance))
        .sorted(Comparator.comparingDouble(Near::distance))
        .limit(NEAR)
        .map(Near::name)
        .toList();
  }

  private double to(SizeName size) {
    List<Double> here = inUnitOf(size);
    return Math.min(distance(here, size.numbers), distance(here, size.oneSide()));
  }
}

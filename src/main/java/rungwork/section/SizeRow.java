package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwork.csv.CsvFile;
import rungwork.csv.CsvRow;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.section.SizeTable.Printed;
import rungwork.section.SizeTable.Tag;

/**
 * One row of a file of sizes: its name, its shape, the dimensions that the shape asks, and what the
 * source prints beside them. A column's name ends in its unit.
 *
 * @param file the file
 * @param cells the row
 */
record SizeRow(CsvFile file, CsvRow cells) {
  private static final double INCH = 0.0254;

  /** Units of dimensions. */
  private static final Map<String, Scale> LENGTHS =
      Map.of("mm", Scale.MM, "in", new Scale("in", INCH));

  /** Columns without a unit. */
  private static final List<String> WORDS = List.of("size", "shape", "source", "tag");

  private static final Map<String, Tag> TAGS =
      Map.of("read", Tag.READ, "memory", Tag.MEMORY, "practice", Tag.PRACTICE, "own", Tag.OWN);

  /** Whether a column of this name means anything. */
  static boolean knows(String column) {
    boolean dimension =
        SizeShape.dimensions().contains(stem(column)) && LENGTHS.containsKey(unit(column));
    return WORDS.contains(column) || dimension || SizeProperty.of(column).isPresent();
  }

  static String known() {
    Stream<String> dimensions = SizeShape.dimensions().stream().map(stem -> stem + "_mm or _in");
    return Stream.concat(WORDS.stream(), dimensions).collect(Collectors.joining(", "));
  }

  private static String stem(String column) {
    return column.substring(0, Math.max(0, column.indexOf('_')));
  }

  private static String unit(String column) {
    return column.substring(column.indexOf('_') + 1);
  }

  /** The size that the row describes. */
  SizeTable.Size size() {
    String size = cells.required("size");
    Section section = section(size);
    String source = cells.text("source");
    String tag = cells.text("tag");
    return new SizeTable.Size(
        size,
        section,
        printed(section),
        source.isEmpty() ? file.name() : source,
        tag.isEmpty() ? Tag.OWN : tag(tag));
  }

  private Section section(String size) {
    String word = cells.required("shape");
    SizeShape shape =
        SizeShape.of(word)
            .orElseThrow(() -> cells.refusal("shape", word + " is none of " + SizeShape.words()));
    filledDimensions().forEach(column -> refuseIdle(column, shape));
    try {
      return shape.section(this).named(name(shape, size));
    } catch (ModelException wrong) {
      boolean placed = wrong.getMessage().startsWith(file.name() + " line ");
      throw placed ? wrong : cells.refusal(size, wrong.getMessage());
    }
  }

  private Stream<String> filledDimensions() {
    return file.columns().stream()
        .filter(column -> SizeShape.dimensions().contains(stem(column)))
        .filter(column -> LENGTHS.containsKey(unit(column)) && !cells.text(column).isEmpty());
  }

  /** Refuses a dimension that the shape has no use for, and one that is given twice. */
  private void refuseIdle(String column, SizeShape shape) {
    if (!shape.asks(stem(column))) {
      throw cells.refusal(column, "a " + shape.word() + " has no " + stem(column));
    }
    filledDimensions()
        .takeWhile(other -> !other.equals(column))
        .filter(other -> stem(other).equals(stem(column)))
        .forEach(
            other -> {
              throw cells.refusal(column, "stands beside " + other + "; give one of the two");
            });
  }

  /** A size that begins with letters names itself; another is named by its shape and unit. */
  private String name(SizeShape shape, String size) {
    if (Character.isLetter(size.charAt(0))) {
      return size;
    }
    boolean inches = filledDimensions().anyMatch(column -> unit(column).equals("in"));
    return shape.word() + " " + size + (inches ? " in" : "");
  }

  private List<Printed> printed(Section section) {
    List<Printed> printed = new ArrayList<>();
    for (String column : file.columns()) {
      String digits = cells.text(column);
      if (!digits.isEmpty()) {
        SizeProperty.of(column)
            .ifPresent(property -> printed.add(printed(property, column, section)));
      }
    }
    return printed;
  }

  private Printed printed(SizeProperty property, String column, Section section) {
    cells.number(column);
    try {
      return property.printed(column, cells.text(column), section);
    } catch (ModelException wrong) {
      throw cells.refusal(column, wrong.getMessage());
    }
  }

  /** A dimension that the shape needs [m]. */
  double length(String stem) {
    return optionalLength(stem)
        .orElseThrow(() -> cells.refusal(stem + "_mm", "nothing stands there, nor in inches"));
  }

  /** A dimension that the shape can do without [m]. */
  OptionalDouble optionalLength(String stem) {
    return filledDimensions()
        .filter(column -> stem(column).equals(stem))
        .mapToDouble(column -> cells.number(column) * LENGTHS.get(unit(column)).inSi())
        .findFirst();
  }

  private Tag tag(String word) {
    if (!TAGS.containsKey(word.toLowerCase(Locale.ROOT))) {
      throw cells.refusal("tag", word + " is none of read, memory, practice, own");
    }
    return TAGS.get(word.toLowerCase(Locale.ROOT));
  }
}

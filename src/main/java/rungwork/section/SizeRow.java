package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.section.SizeTable.Printed;
import rungwork.section.SizeTable.Tag;

/**
 * One row of a file of sizes: its name, its shape, the dimensions that the shape asks, and what the
 * source prints beside them. A column's name ends in its unit.
 *
 * @param file the file's name, for messages
 * @param line the line that the row ends on, for messages
 * @param columns the names of the file's columns
 * @param cells the row
 */
record SizeRow(String file, long line, List<String> columns, CSVRecord cells) {
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
    String size = required("size");
    Section section = section(size);
    String source = optional("source");
    String tag = optional("tag");
    return new SizeTable.Size(
        size,
        section,
        printed(section),
        source.isEmpty() ? file : source,
        tag.isEmpty() ? Tag.OWN : tag(tag));
  }

  private Section section(String size) {
    String word = required("shape");
    SizeShape shape =
        SizeShape.of(word)
            .orElseThrow(() -> refusal("shape", word + " is none of " + SizeShape.words()));
    try {
      return shape.section(this).named(name(shape, size));
    } catch (ModelException wrong) {
      throw wrong.getMessage().startsWith(file) ? wrong : refusal(size, wrong.getMessage());
    }
  }

  /** A size that begins with letters names itself; another is named by its shape and unit. */
  private String name(SizeShape shape, String size) {
    if (Character.isLetter(size.charAt(0))) {
      return size;
    }
    boolean inches =
        columns.stream()
            .filter(column -> SizeShape.dimensions().contains(stem(column)))
            .anyMatch(column -> unit(column).equals("in") && !optional(column).isEmpty());
    return shape.word() + " " + size + (inches ? " in" : "");
  }

  private List<Printed> printed(Section section) {
    List<Printed> printed = new ArrayList<>();
    for (String column : columns) {
      String digits = optional(column);
      if (!digits.isEmpty()) {
        SizeProperty.of(column)
            .ifPresent(
                property -> {
                  number(column, digits);
                  printed.add(property.printed(column, digits, section));
                });
      }
    }
    return printed;
  }

  /** A dimension that the shape needs [m]. */
  double length(String stem) {
    return optionalLength(stem)
        .orElseThrow(() -> refusal(stem + "_mm", "nothing stands there, nor in inches"));
  }

  /** A dimension that the shape can do without [m]. */
  OptionalDouble optionalLength(String stem) {
    for (String column : columns) {
      if (stem(column).equals(stem) && !optional(column).isEmpty()) {
        double value = number(column, optional(column));
        return OptionalDouble.of(value * LENGTHS.get(unit(column)).inSi());
      }
    }
    return OptionalDouble.empty();
  }

  /** A refusal that names file, line and column. */
  ModelException refusal(String column, String reason) {
    return new ModelException(file + " line " + line + ", " + column + ": " + reason);
  }

  private Tag tag(String word) {
    if (!TAGS.containsKey(word.toLowerCase(Locale.ROOT))) {
      throw refusal("tag", word + " is none of read, memory, practice, own");
    }
    return TAGS.get(word.toLowerCase(Locale.ROOT));
  }

  private double number(String column, String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw refusal(column, "\"" + text + "\" is not a number");
    }
  }

  private String required(String column) {
    if (optional(column).isEmpty()) {
      throw refusal(column, "nothing stands there");
    }
    return optional(column);
  }

  /** What stands in a column; empty where nothing does. */
  private String optional(String column) {
    if (!columns.contains(column)) {
      return "";
    }
    if (!cells.isSet(column)) {
      throw refusal(column, "the row has no such column");
    }
    return cells.get(column).strip();
  }
}

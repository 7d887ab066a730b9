package rungwork.section;

import java.nio.file.Path;
import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A table of sizes that can be bought, such as {@code square tube EN 10219-2}. Every size is a
 * section computed here; what its own table prints stands beside it for comparison and is used for
 * nothing else.
 *
 * @param name what the table is called
 * @param sizes its sizes in its own order
 */
public record SizeTable(String name, List<Size> sizes) {

  /** How a size and its figures reached this project. */
  public enum Tag {
    /** Read in a reproduction of the source. */
    READ("read"),
    /** Recalled; the page was not at hand. */
    MEMORY("from memory"),
    /** What merchants commonly keep; no standard was looked at. */
    PRACTICE("common practice, no source"),
    /** The reader's own list. */
    OWN("own list");

    private final String words;

    Tag(String words) {
      this.words = words;
    }

    /**
     * The tag in words.
     *
     * @return for example {@code from memory}
     */
    public String words() {
      return words;
    }
  }

  /**
   * One size of a table.
   *
   * @param name as the trade writes it, such as {@code 50x50x3} or {@code UPE 80}
   * @param section the section, its web or longer side upright
   * @param printed what the table prints beside the dimensions; none where nothing was at hand
   * @param source of the dimensions and of what is printed
   * @param tag how they reached this project
   */
  public record Size(String name, Section section, List<Printed> printed, String source, Tag tag) {
    /** Copies its list. */
    public Size {
      name = Guard.name("size", name);
      printed = List.copyOf(printed);
    }

    /** The section with its source. */
    @Override
    public String toString() {
      return section + "; " + source;
    }
  }

  /**
   * A property that a table prints, beside the one that is computed from the same dimensions.
   *
   * @param letter the property's letter, such as {@code Iy}
   * @param scale the unit that the table prints it in
   * @param digits exactly as printed
   * @param computed the section's own value [SI]
   */
  public record Printed(String letter, Scale scale, String digits, double computed) {
    /** Refuses digits that are no number. */
    public Printed {
      Guard.finite(letter, computed);
      if (!digits.matches("[0-9]+([.][0-9]+)?(e-?[0-9]{1,3})?")) {
        throw new ModelException(
            "the printed value \"%s\" of %s is no number".formatted(digits, letter));
      }
    }

    /**
     * How far the computed value stands from the printed one.
     *
     * @return (computed − printed)/printed [1]
     */
    public double difference() {
      return computed / scale.inSi() / Double.parseDouble(digits) - 1;
    }
  }

  /** Refuses a table without a name; copies its list. */
  public SizeTable {
    name = Guard.name("size table", name);
    sizes = List.copyOf(sizes);
  }

  /**
   * The names of all tables that travel with Rungwork.
   *
   * @return the names
   */
  public static List<String> names() {
    return List.copyOf(SizeFile.BUILT_IN.keySet());
  }

  /**
   * A table that travels with Rungwork.
   *
   * @param name one of {@link #names}; capitals, blanks and hyphens do not matter
   * @return the table
   */
  public static SizeTable of(String name) {
    return SizeFile.builtIn(name);
  }

  /**
   * The reader's own list, a CSV file with the columns of the tables in {@code data/}: {@code
   * size}, {@code shape} and the shape's dimensions with their unit, such as {@code wall_mm}.
   * Source and tag may be left out.
   *
   * @param file the file; its name without the ending is the table's name
   * @return the table
   */
  public static SizeTable read(Path file) {
    return SizeFile.own(file);
  }

  /**
   * The section of a size, written as the trade does: {@code 50x50x3}, {@code 50 × 50 × 3 mm},
   * {@code 2x2x1/8}, {@code UPE 80}. Numbers without a unit are in the table's own.
   *
   * @param size which one
   * @return its section
   * @throws ModelException when the table has no such size; the message names the nearest
   */
  public Section at(String size) {
    return size(size).section();
  }

  /**
   * A size with its source and what its table prints.
   *
   * @param size which one, written as for {@link #at}
   * @return the size
   * @throws ModelException when the table has no such size; the message names the nearest
   */
  public Size size(String size) {
    return SizeName.find(size, this);
  }

  /**
   * All sections of the table.
   *
   * @return the sections in the table's order
   */
  public List<Section> sections() {
    return sizes.stream().map(Size::section).toList();
  }

  @Override
  public String toString() {
    return name + ": " + String.join(", ", sizes.stream().map(Size::name).toList());
  }
}

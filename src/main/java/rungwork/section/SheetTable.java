package rungwork.section;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.csv.CsvFile;
import rungwork.csv.CsvRow;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Quantities;

/**
 * Thicknesses of sheet, plate and tube walls by one system of numbers. The same number means
 * different steel in each system (16 is 1.52 mm of sheet by the Manufacturers' Standard, 1.63 mm by
 * the British standard wire gauge, 1.65 mm of tube wall by the Birmingham gauge), so a number is
 * never read without its system.
 *
 * @param system such as {@code Manufacturers' Standard gauge}
 * @param sheets its thicknesses, in the file's order
 */
public record SheetTable(String system, List<Sheet> sheets) {
  private static final String FILE = "sheets.csv";
  private static final double INCH = 0.0254;

  /**
   * One thickness.
   *
   * @param size its number or fraction in the system
   * @param thickness t [m]
   * @param source where the figure comes from
   */
  public record Sheet(String size, double thickness, String source) {
    /** Refuses a thickness that is not above zero. */
    public Sheet {
      Guard.positive("sheet thickness", thickness, Scale.MM);
    }
  }

  /** Copies its list. */
  public SheetTable {
    sheets = List.copyOf(sheets);
  }

  /**
   * The systems that travel with Rungwork.
   *
   * @return their names
   */
  public static List<String> systems() {
    return rows().stream().map(row -> row.text("system")).distinct().toList();
  }

  /**
   * The thicknesses of a system.
   *
   * @param system one of {@link #systems}; capitals, blanks and hyphens do not matter
   * @return its table
   */
  public static SheetTable of(String system) {
    String chosen = SizeName.choose("system of sheet thicknesses", system, systems());
    return new SheetTable(
        chosen,
        rows().stream()
            .filter(row -> row.text("system").equals(chosen))
            .map(SheetTable::sheet)
            .toList());
  }

  /**
   * The thickness that a number stands for in this system.
   *
   * @param size the number or fraction, such as {@code 16} or {@code 3/16}
   * @return the thickness
   */
  public Quantity<Length> at(String size) {
    String wanted = Guard.name("size of sheet", size);
    return sheets.stream()
        .filter(sheet -> sheet.size().equals(wanted))
        .findFirst()
        .map(sheet -> Quantities.mm(sheet.thickness() * 1000))
        .orElseThrow(
            () -> new ModelException(system + " has no size " + wanted + "; it has " + sizes()));
  }

  private String sizes() {
    return String.join(", ", sheets.stream().map(Sheet::size).toList());
  }

  private static Sheet sheet(CsvRow row) {
    double thickness =
        row.text("thickness_in").isEmpty()
            ? row.number("thickness_mm") * Scale.MM.inSi()
            : row.number("thickness_in") * INCH;
    return new Sheet(row.text("size"), thickness, row.text("source"));
  }

  private static List<CsvRow> rows() {
    try (InputStream stream = SheetTable.class.getResourceAsStream("/rungwork/data/" + FILE)) {
      return CsvFile.of(FILE, stream).rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String toString() {
    List<String> lines =
        sheets.stream()
            .map(sheet -> sheet.size() + " = " + Scale.MM.show(sheet.thickness()))
            .toList();
    return system + ": " + String.join(", ", lines);
  }
}

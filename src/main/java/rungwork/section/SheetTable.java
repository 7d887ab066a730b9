package rungwork.section;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
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
    return rows().stream().map(row -> row.get("system")).distinct().toList();
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
            .filter(row -> row.get("system").equals(chosen))
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

  private static Sheet sheet(CSVRecord row) {
    String inches = row.get("thickness_in");
    double thickness =
        inches.isEmpty()
            ? Double.parseDouble(row.get("thickness_mm")) * Scale.MM.inSi()
            : Double.parseDouble(inches) * INCH;
    return new Sheet(row.get("size"), thickness, row.get("source"));
  }

  private static List<CSVRecord> rows() {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream stream = SheetTable.class.getResourceAsStream("/rungwork/data/" + FILE);
        Reader text = new InputStreamReader(stream, StandardCharsets.UTF_8);
        CSVParser parser = CSVParser.parse(text, format)) {
      return new ArrayList<>(parser.getRecords());
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

package rungwork.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;

/**
 * The text of a comma-separated file.
 *
 * @param name the file's name, for messages
 * @param text what stands in it
 */
record CsvText(String name, String text) {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreSurroundingSpaces(true).get();

  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final long LARGEST = 100_000_000;
  private static final int END = -1;

  private static final String IN_UTF_8 = "save the file as CSV in UTF-8";

  /** A file that a person brings. */
  static CsvText read(String kind, Path file) {
    String what = Guard.name("kind of file", kind);
    Path whole = file.toAbsolutePath().normalize();
    if (!Files.exists(whole)) {
      throw new ModelException("there is no " + what + " " + whole);
    }
    if (!Files.isRegularFile(whole)) {
      throw new ModelException(what + " " + whole + " is not a file");
    }
    try {
      if (Files.size(whole) > LARGEST) {
        throw new ModelException(what + " " + whole + " is larger than 100 MB");
      }
      return of(whole.getFileName().toString(), Files.readAllBytes(whole));
    } catch (IOException e) {
      throw new ModelException(what + " " + whole + " cannot be read; may it be read by you?");
    }
  }

  static CsvText of(String name, byte[] bytes) {
    String text = decoded(name, bytes);
    boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
    return new CsvText(name, marked ? text.substring(1) : text);
  }

  private static String decoded(String name, byte[] bytes) {
    CharsetDecoder strict = StandardCharsets.UTF_8.newDecoder();
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    boolean good = !strict.decode(ByteBuffer.wrap(bytes), out, true).isError();
    CsvText before = new CsvText(name, out.flip().toString());
    if (!good) {
      throw before.refusalAtEnd("a letter there is not in UTF-8; " + IN_UTF_8);
    }
    if (before.text.indexOf('\0') >= 0) {
      CsvText plain = new CsvText(name, before.text.substring(0, before.text.indexOf('\0')));
      throw plain.refusalAtEnd("what stands there is no text; " + IN_UTF_8);
    }
    return before.text;
  }

  /** The last cell of this text is where the reading stopped. */
  private ModelException refusalAtEnd(String reason) {
    String[] lines = text.split("\\R", END);
    int column = lines[lines.length - 1].split(",", END).length - 1;
    List<String> columns = lines.length == 1 ? List.of() : List.of(lines[0].split(",", END));
    return new CsvPlace(name, lines.length).refusal(CsvFile.called(columns, column), reason);
  }

  CsvFile parse() {
    List<String> columns = new ArrayList<>();
    List<CsvRow> rows = new ArrayList<>();
    long line = 1;
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      Iterator<CSVRecord> records = parser.iterator();
      while (records.hasNext()) {
        List<String> cells = records.next().stream().map(String::strip).toList();
        if (columns.isEmpty()) {
          columns.addAll(heads(cells));
        } else if (!cells.stream().allMatch(String::isEmpty)) {
          rows.add(new CsvRow(new CsvPlace(name, line), List.copyOf(columns), cells));
        }
        line = parser.getCurrentLineNumber() + 1;
      }
    } catch (IOException | UncheckedIOException e) {
      throw unmatched(line, columns);
    }
    return new CsvFile(name, columns.isEmpty() ? heads(List.of("")) : columns, rows)
        .withUsableColumns();
  }

  private List<String> heads(List<String> cells) {
    CsvPlace first = new CsvPlace(name, 1);
    if (cells.stream().allMatch(String::isEmpty)) {
      throw first.refusal("column 1", "nothing stands there; the first line names the columns");
    }
    String only = cells.get(0);
    if (cells.size() == 1 && (only.indexOf(';') >= 0 || only.indexOf('\t') >= 0)) {
      String mark = only.indexOf(';') >= 0 ? "semicolons" : "tabs";
      throw first.refusal("column 1", mark + " part the columns; save the file with commas");
    }
    return cells;
  }

  /** A row whose quotation marks do not match: the first cell that begins with one and no more. */
  private ModelException unmatched(long line, List<String> columns) {
    String[] cells = text.split("\\R", END)[(int) line - 1].split(",", END);
    int at = 0;
    while (at < cells.length - 1 && !cells[at].strip().matches("\"([^\"]|\"[^\"].*|.*[^\"])?")) {
      at++;
    }
    return new CsvPlace(name, line)
        .refusal(
            CsvFile.called(columns, at),
            "the quotation marks do not match; a cell stands in a pair of them, one inside it is"
                + " doubled");
  }
}

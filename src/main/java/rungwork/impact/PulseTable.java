package rungwork.impact;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rungwork.fault.ModelException;

/**
 * A measured or drawn pulse as CSV; the units stand in the heads.
 *
 * @param file the file's name, for messages
 */
record PulseTable(String file) {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();

  private static final Map<String, Double> TIMES = Map.of("time_ms", 1e-3, "time_s", 1.0);
  private static final Map<String, Double> DECELERATIONS =
      Map.of("deceleration_g", 9.80665, "deceleration_m_s2", 1.0);

  Pulse read(Reader text) throws IOException {
    List<double[]> rows = new ArrayList<>();
    try (CSVParser records = CSVParser.parse(text, FORMAT)) {
      String time = column(records, TIMES);
      String deceleration = column(records, DECELERATIONS);
      for (CSVRecord cells : records) {
        long line = records.getCurrentLineNumber();
        rows.add(
            new double[] {
              number(cells, time, line) * TIMES.get(time),
              number(cells, deceleration, line) * DECELERATIONS.get(deceleration)
            });
        refuseFall(rows, time, line);
      }
    }
    return Pulse.through(
        file,
        rows.stream().mapToDouble(row -> row[0]).toArray(),
        rows.stream().mapToDouble(row -> row[1]).toArray());
  }

  private String column(CSVParser records, Map<String, Double> known) {
    Set<String> heads = records.getHeaderMap().keySet();
    return heads.stream()
        .filter(known::containsKey)
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    file
                        + " line 1: there is no column "
                        + String.join(" or ", known.keySet().stream().sorted().toList())
                        + "; the heads are "
                        + String.join(", ", heads)));
  }

  private double number(CSVRecord cells, String column, long line) {
    String cell = cells.isSet(column) ? cells.get(column) : "";
    try {
      double value = Double.parseDouble(cell);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Said below, with the place.
    }
    throw new ModelException(
        "%s line %d, %s: \"%s\" is not a number".formatted(file, line, column, cell));
  }

  private void refuseFall(List<double[]> rows, String column, long line) {
    int last = rows.size() - 1;
    if (last > 0 && rows.get(last)[0] < rows.get(last - 1)[0]) {
      throw new ModelException(
          "%s line %d, %s: goes back in time; times must not fall".formatted(file, line, column));
    }
  }
}

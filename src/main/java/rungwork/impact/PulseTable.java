package rungwork.impact;

import java.util.List;
import java.util.Map;
import rungwork.csv.CsvFile;

/**
 * A measured or drawn pulse as CSV; the units stand in the heads.
 *
 * @param file the file
 */
record PulseTable(CsvFile file) {
  private static final Map<String, Double> TIMES = Map.of("time_ms", 1e-3, "time_s", 1.0);
  private static final Map<String, Double> DECELERATIONS =
      Map.of("deceleration_g", 9.80665, "deceleration_m_s2", 1.0);

  Pulse read() {
    String time = column(TIMES);
    String deceleration = column(DECELERATIONS);
    double[] times = numbers(time, TIMES.get(time));
    for (int i = 1; i < times.length; i++) {
      if (times[i] < times[i - 1]) {
        throw file.rows().get(i).refusal(time, "goes back in time; times must not fall");
      }
    }
    return Pulse.through(
        file.name(), times, numbers(deceleration, DECELERATIONS.get(deceleration)));
  }

  private double[] numbers(String column, double unit) {
    return file.rows().stream().mapToDouble(row -> row.number(column) * unit).toArray();
  }

  private String column(Map<String, Double> known) {
    List<String> found = file.columns().stream().filter(known::containsKey).toList();
    if (found.size() > 1) {
      throw file.refusal(found.get(1), "stands beside " + found.get(0) + "; give one of the two");
    }
    return found.stream().findFirst().orElseThrow(() -> missing(known));
  }

  private RuntimeException missing(Map<String, Double> known) {
    List<String> names = known.keySet().stream().sorted().toList();
    return file.refusal(
        String.join(" or ", names),
        "there is no such column; the heads are " + String.join(", ", file.columns()));
  }
}

package rungwork.notebook;

import static java.util.Comparator.comparing;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import rungwork.kernel.Cell;
import rungwork.kernel.CellEnd;
import rungwork.kernel.CellOutput;
import rungwork.kernel.Evaluator;
import rungwork.kernel.NotebookRunner;

/**
 * The cells of a notebook that run quickly, to be run again in the same session with the line at
 * the top changed: what the slow ones made is still there.
 */
final class QuickCells {
  /** The line that every notebook has once, at its top. */
  private static final Pattern START = Pattern.compile("Rungwork\\.start\\((Units\\.METRIC)?\\);");

  private static final String IN_INCHES = "Rungwork.start(Units.INCH_POUND);";

  /** A notebook that took no more of the processors is run again as a whole. */
  private static final Duration SHORT = Duration.ofSeconds(25);

  /** What the chosen cells of a longer one may have taken together. */
  private static final Duration BUDGET = Duration.ofSeconds(3);

  /** A line that makes or changes what later cells may use: a variable, a type or a method. */
  private static final Pattern DECLARES =
      Pattern.compile(
          "(?m)^\\w+ = |^(?!(return|import|for|if|while|try|else|new)\\b)[A-Za-z][\\w.<>\\[\\], ?]*"
              + " \\w+ ?[=(;]");

  private final List<String> sources = new ArrayList<>();

  /** Those that are meant to fail; they are not run again. */
  private final Set<Integer> failing = new TreeSet<>();

  private static final OperatingSystemMXBean PROCESSORS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /** Of the processors' time at the beginning of each cell, and at the end. */
  private final List<Duration> begun = new ArrayList<>();

  QuickCells(Path notebook) throws IOException {
    JsonObject root = JsonParser.parseString(Files.readString(notebook)).getAsJsonObject();
    for (JsonElement each : root.getAsJsonArray("cells")) {
      JsonObject cell = each.getAsJsonObject();
      String source = source(cell);
      if (cell.get("cell_type").getAsString().equals("code") && !source.isBlank()) {
        if (cell.get("metadata").toString().contains("\"raises-exception\"")) {
          failing.add(sources.size());
        }
        sources.add(source);
      }
    }
  }

  private static String source(JsonObject cell) {
    JsonElement source = cell.get("source");
    if (!source.isJsonArray()) {
      return source.getAsString();
    }
    StringBuilder lines = new StringBuilder();
    source.getAsJsonArray().forEach(line -> lines.append(line.getAsString()));
    return lines.toString();
  }

  /** The code that its author typed. */
  List<String> sources() {
    return sources;
  }

  void begins(NotebookRunner.Progress progress) {
    ends();
  }

  void ends() {
    begun.add(Duration.ofNanos(PROCESSORS.getProcessCpuTime()));
  }

  private Duration took(int cell) {
    return begun.get(cell + 1).minus(begun.get(cell));
  }

  /**
   * All of a short notebook. Of a longer one the first and the quickest of those that declare
   * nothing: remade things would not fit what the slow cells made before.
   */
  private Set<Integer> chosen() {
    Set<Integer> all = new TreeSet<>(IntStream.range(0, sources.size()).boxed().toList());
    all.removeAll(failing);
    if (begun.get(sources.size()).minus(begun.get(0)).compareTo(SHORT) <= 0) {
      return all;
    }
    Set<Integer> chosen = new TreeSet<>(Set.of(0));
    Duration sum = Duration.ZERO;
    for (int cell : all.stream().sorted(comparing(this::took)).toList()) {
      if (!DECLARES.matcher(sources.get(cell)).find()) {
        sum = sum.plus(took(cell));
        if (sum.compareTo(BUDGET) <= 0) {
          chosen.add(cell);
        }
      }
    }
    return chosen;
  }

  /** Whether the line stands in the first cell. */
  boolean canChoose() {
    return !sources.isEmpty() && START.matcher(sources.get(0)).find();
  }

  /** All but the line at the top. */
  String rest() {
    return START.matcher(String.join("\n", sources)).replaceFirst("");
  }

  /** Runs them in inch-pound units; a notebook without the line at the top has none. */
  List<CellOutput> inInches(Evaluator evaluator) {
    if (!canChoose()) {
      return List.of();
    }
    List<CellOutput> outputs = new ArrayList<>();
    for (int cell : chosen()) {
      String source = START.matcher(sources.get(cell)).replaceAll(IN_INCHES);
      CellEnd end = evaluator.run(new Cell(cell + 1, source), Duration.ofMinutes(2), outputs::add);
      assertEquals(CellEnd.FINISHED, end, () -> source + "\n" + outputs.get(outputs.size() - 1));
    }
    return List.copyOf(outputs);
  }
}

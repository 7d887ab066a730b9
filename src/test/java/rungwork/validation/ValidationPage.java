package rungwork.validation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/** The page {@code docs/validation.md}, made from the rows of a full test run. */
final class ValidationPage {
  private static final String OPENING =
      """
      # Validation

      Each line compares an outside value with the one that Rungwork computes. A value passes when it rounds to the
      digits printed: the tolerance is half a unit of the last printed digit, unless the last column states another and why.

      This page is made from `target/validation.csv` of a full test run by `mvn verify -Dvalidation.write=true`;
      `mvn verify` fails when the two differ. It shows agreement with these sources, and nothing about a frame outside
      their range.

      """;

  /** As {@link Published#allowing} writes it behind the source. */
  private static final Pattern ALLOWANCE = Pattern.compile(" \\[tolerance (?<words>.*)]$");

  private static final double WORTH_SHOWING = 1e-6;

  private final List<CSVRecord> rows;

  ValidationPage(List<CSVRecord> rows) {
    this.rows = List.copyOf(rows);
  }

  String text() {
    StringBuilder page = new StringBuilder(OPENING).append(counts());
    bySource()
        .forEach(
            (heading, sourceRows) -> {
              page.append("\n## ").append(heading).append("\n\n");
              page.append(
                  "| case | quantity | printed | computed | difference | passes within |\n");
              page.append("| --- | --- | ---: | ---: | ---: | --- |\n");
              sourceRows.forEach(row -> page.append(line(row)));
            });
    return page.toString();
  }

  /** How many rows carry a tag. */
  long count(Tag tag) {
    return rows.stream().filter(row -> tag(row) == tag).count();
  }

  private String counts() {
    StringBuilder table =
        new StringBuilder("| how the value got here | values |\n| --- | ---: |\n");
    for (Tag tag : Tag.values()) {
      table.append("| ").append(tag.words()).append(" | ").append(count(tag)).append(" |\n");
    }
    return table.append("| together | ").append(rows.size()).append(" |\n").toString();
  }

  private Map<String, List<CSVRecord>> bySource() {
    Map<String, List<CSVRecord>> groups = new LinkedHashMap<>();
    for (CSVRecord row : rows) {
      String heading = source(row) + " (" + tag(row).words() + ")";
      groups.computeIfAbsent(heading, key -> new ArrayList<>()).add(row);
    }
    return groups;
  }

  private static String source(CSVRecord row) {
    return ALLOWANCE.matcher(row.get("source")).replaceFirst("");
  }

  private static String allowance(CSVRecord row) {
    Matcher stated = ALLOWANCE.matcher(row.get("source"));
    return stated.find() ? stated.group("words") : "the digits";
  }

  private static Tag tag(CSVRecord row) {
    return Tag.valueOf(row.get("tag").toUpperCase(Locale.ROOT));
  }

  private static String line(CSVRecord row) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %s | %s | %s |\n",
        cell(row.get("case")),
        cell(row.get("quantity")),
        cell((row.get("expected") + " " + row.get("unit")).strip()),
        computed(row),
        difference(Double.parseDouble(row.get("relative_error"))),
        cell(allowance(row)));
  }

  private static String computed(CSVRecord row) {
    return String.format(Locale.ROOT, "%.5g", Double.parseDouble(row.get("computed")));
  }

  /** Two digits; below a millionth the number would depend on the machine. */
  private static String difference(double relative) {
    return relative < WORTH_SHOWING
        ? "under 0.0001 %"
        : String.format(Locale.ROOT, "%.2g %%", 100 * relative);
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }
}

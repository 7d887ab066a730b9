package rungwork.record;

import java.util.List;
import java.util.stream.Stream;
import rungwork.record.Reading.Standing;

/**
 * How many places stand how beside the tolerances.
 *
 * @param standings one a place
 */
record Tally(List<Standing> standings) {

  /** Those inside and outside, and how many nobody measured. */
  String line() {
    List<String> parts =
        Stream.of(Standing.OUTSIDE, Standing.SOURCES_DIFFER, Standing.WITHIN)
            .filter(standing -> count(standing) > 0)
            .map(standing -> count(standing) + " " + standing.words())
            .toList();
    String found =
        parts.isEmpty()
            ? "Nothing is measured yet"
            : "Beside the tolerances: " + String.join(", ", parts);
    long open = count(Standing.NOT_MEASURED);
    return found + (open > 0 ? "; not checked: " + open + " places not measured" : "");
  }

  private long count(Standing standing) {
    return standings.stream().filter(standing::equals).count();
  }
}

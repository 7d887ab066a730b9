package rungwork.study;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwork.study.Screening.Row;

/** What a screening has found up to now, of a block of combinations or of all: little of each. */
final class Found {
  /** Different refusals that are told apart. */
  static final int REASONS = 20;

  /** The lightest that pass, {@value Screening#KEPT} at most. */
  final TreeSet<Row> kept = new TreeSet<>(Row.LIGHTEST_FIRST);

  /** How many combinations each reason ruled out. */
  final Map<String, Integer> ruledOut = new TreeMap<>();

  /** How many could not be modelled or solved, for the first {@value #REASONS} reasons. */
  final TreeMap<String, Integer> refused = new TreeMap<>();

  /** How many could not for another reason. */
  int others;

  int screened;
  int passed;

  void keep(Row row) {
    kept.add(row);
    trim();
  }

  void ruleOut(String reason) {
    ruledOut.merge(reason, 1, Integer::sum);
  }

  void refuse(String reason) {
    refuse(reason, 1);
  }

  private void refuse(String reason, int times) {
    refused.merge(reason, times, Integer::sum);
    if (refused.size() > REASONS) {
      others += refused.pollLastEntry().getValue();
    }
  }

  /** Adds what was found of other combinations. */
  void add(Found more) {
    screened += more.screened;
    passed += more.passed;
    others += more.others;
    kept.addAll(more.kept);
    trim();
    more.ruledOut.forEach((reason, times) -> ruledOut.merge(reason, times, Integer::sum));
    more.refused.forEach(this::refuse);
  }

  /** What is heavier is not kept [kg]; infinite while there is room. */
  double heaviest() {
    return kept.size() < Screening.KEPT ? Double.POSITIVE_INFINITY : kept.last().numbers().mass();
  }

  private void trim() {
    while (kept.size() > Screening.KEPT) {
      kept.pollLast();
    }
  }
}

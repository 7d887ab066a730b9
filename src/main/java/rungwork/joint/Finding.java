package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Verdict;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.Reason;
import rungwork.quantity.Kind;

/**
 * What was found: the working, the two numbers that it ends in, and what lies outside its rule.
 *
 * @param working the lines in order
 * @param numbers demand and capacity, from the last lines
 * @param source of the rule as a whole
 * @param outside every reason why the rule does not cover this case; empty when it does
 */
record Finding(List<Step> working, Measured numbers, String source, List<Reason> outside) {
  Finding {
    working = List.copyOf(working);
    outside = List.copyOf(outside);
  }

  /** A demand against a capacity; the rule is the capacity's. */
  static Finding compare(Step demand, Step capacity) {
    Formula rule = capacity.formula();
    Measured numbers = new Measured(demand.result(), capacity.result(), rule.result().kind());
    return new Finding(List.of(demand, capacity), numbers, rule.source(), List.of());
  }

  /** A ratio that must not exceed one. */
  static Finding ratio(Step ratio) {
    Measured numbers = new Measured(ratio.result(), 1, Kind.RATIO);
    return new Finding(List.of(ratio), numbers, ratio.formula().source(), List.of());
  }

  Finding after(List<Step> earlier) {
    List<Step> all = new ArrayList<>(earlier);
    all.addAll(working);
    return new Finding(all, numbers, source, outside);
  }

  Finding after(Step... earlier) {
    return after(List.of(earlier));
  }

  Finding outside(List<Reason> reasons) {
    List<Reason> all = new ArrayList<>(outside);
    all.addAll(reasons);
    return new Finding(working, numbers, source, all);
  }

  /** The same finding with another source for its rule as a whole. */
  Finding sourcedBy(String rule) {
    return new Finding(working, numbers, rule, outside);
  }

  double utilisation() {
    return numbers.utilisation();
  }

  /** The answer to a question of proportion. */
  Check answers(Question question) {
    return answers(question, Factors.proportion());
  }

  Check answers(Question question, Basis basis) {
    Verdict verdict =
        outside.isEmpty() ? numbers : new Verdict.OutsideRange(numbers, Reason.joined(outside));
    return new Check(
        question.what(),
        question.part(),
        question.where(),
        question.loadCase(),
        basis,
        verdict,
        working,
        source,
        question.caution());
  }
}

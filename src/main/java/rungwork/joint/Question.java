package rungwork.joint;

import java.util.List;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Verdict;
import rungwork.check.Verdict.Reason;

/**
 * What is asked: the parts of a check that stand before its answer.
 *
 * @param what what is checked
 * @param part the part
 * @param where the place on it, in words without units; may be empty
 * @param loadCase the load case
 * @param caution what the check does not see; may be empty
 */
record Question(String what, String part, String where, String loadCase, String caution) {
  static Question of(String what, String part, FaceLoad load) {
    return new Question(what, part, "", load.loadCase(), "");
  }

  Question at(String place) {
    return new Question(what, part, place, loadCase, caution);
  }

  Question with(String warning) {
    return new Question(what, part, where, loadCase, warning);
  }

  /** The check that was not made. */
  Check open(Basis basis, String reason, String source) {
    return open(basis, Reason.of(reason), source);
  }

  Check open(Basis basis, Reason reason, String source) {
    Verdict verdict = new Verdict.NotChecked(reason);
    return new Check(what, part, where, loadCase, basis, verdict, List.of(), source, caution);
  }
}

package rungwork.loadpath;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.LimitState;
import rungwork.fault.Scale;

/**
 * A mount's checks, its parts in order within each basis. Parts on different bases are never ranked
 * against each other.
 *
 * @param mount the mount's name
 * @param sheet all checks, with what was not checked
 */
public record ChainSheet(String mount, CheckSheet sheet) {
  /**
   * The governing check of each part, worst first, apart for each basis.
   *
   * @return one list a basis; limits of proportion are no strength and left to the sheet
   */
  public Map<Basis, List<Check>> ranked() {
    Map<Basis, List<Check>> ranked = new LinkedHashMap<>();
    for (Check check : sheet.checks()) {
      if (check.basis().limitState() != LimitState.PROPORTION) {
        ranked.computeIfAbsent(check.basis(), this::within);
      }
    }
    ranked.values().removeIf(List::isEmpty);
    return ranked;
  }

  private List<Check> within(Basis basis) {
    List<Check> own = sheet.checks().stream().filter(c -> c.basis().equals(basis)).toList();
    return CheckSheet.of(sheet.title(), own).governingByPart();
  }

  /**
   * The weakest part of each basis in words, and what was not checked.
   *
   * @return such as {@code weakest: inner weld, 0.83, under pothole braking (yield: design factor
   *     1.5)}, a line a basis
   */
  public String weakest() {
    StringBuilder text = new StringBuilder();
    ranked().forEach((basis, parts) -> text.append(line(basis, parts.get(0))).append('\n'));
    return text + sheet.verdictLine();
  }

  private static String line(Basis basis, Check check) {
    return "weakest: "
        + check.part()
        + ", "
        + Scale.NUMBER.number(check.utilisation().orElseThrow(), 2)
        + ", under "
        + check.loadCase()
        + " ("
        + check.what()
        + "; "
        + basis.limitState().words()
        + ": "
        + basis.factors()
        + (check.made() ? ")" : "; outside its formula's range)");
  }

  @Override
  public String toString() {
    return "Mount " + mount + "\n" + weakest();
  }
}

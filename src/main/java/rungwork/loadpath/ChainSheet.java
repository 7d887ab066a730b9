package rungwork.loadpath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.LimitState;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.joint.FaceLoad;

/**
 * A mount's checks, its parts in order within each basis. Parts on different bases are never ranked
 * against each other.
 *
 * @param chain the mount and its parts
 * @param corners the wheel's forces behind the loads, one a load case; none where no wheel pushes
 * @param arrivals what reached the mount
 * @param sheet all checks, with what was not checked
 */
public record ChainSheet(
    MountChain chain, List<CornerForces> corners, List<Arrival> arrivals, CheckSheet sheet) {
  /** Copies its lists. */
  public ChainSheet {
    corners = List.copyOf(corners);
    arrivals = List.copyOf(arrivals);
  }

  /**
   * One load that reached the mount.
   *
   * @param force in vehicle axes
   * @param load the same in the axes of the face
   */
  public record Arrival(MountForce force, FaceLoad load) {}

  /**
   * This mount under more load cases, with factors of their own, such as a hit beside road cases.
   *
   * @param other the same mount under other load cases
   * @return both as one
   */
  public ChainSheet and(ChainSheet other) {
    if (!chain.equals(other.chain)) {
      throw new ModelException(
          "mount "
              + chain.mount()
              + " and mount "
              + other.chain.mount()
              + " are not the same parts; keep their sheets apart");
    }
    List<CornerForces> allCorners = new ArrayList<>(corners);
    allCorners.addAll(other.corners);
    List<Arrival> all = new ArrayList<>(arrivals);
    all.addAll(other.arrivals);
    return new ChainSheet(chain, allCorners, all, sheet.merged(other.sheet));
  }

  /**
   * What reached the mount under one load case.
   *
   * @param loadCase its name, as a check of this sheet has it
   * @return the load, or nothing when no load has this name
   */
  public Optional<Arrival> arrival(String loadCase) {
    return arrivals.stream().filter(a -> a.load().loadCase().equals(loadCase)).findFirst();
  }

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
   * @return such as {@code weakest: inner weld, 0.83, under pothole braking (base metal beside the
   *     weld; yield: design factor 1.50 on yield)}, a line a basis
   */
  public String weakest() {
    return String.join("\n", weakestOfEach()) + "\n" + sheet.verdictLine();
  }

  /**
   * The weakest part of each basis in words.
   *
   * @return a line a basis
   */
  public List<String> weakestOfEach() {
    List<String> lines = new ArrayList<>();
    ranked().forEach((basis, parts) -> lines.add(line(basis, parts.get(0))));
    return lines;
  }

  /**
   * A basis in few words, without the sources of its factors.
   *
   * @param basis the basis
   * @return such as {@code yield: design factor 1.50 on yield}
   */
  public static String shortly(Basis basis) {
    String factors = basis.factors().replaceAll(" \\([^)]*\\)", "");
    return basis.limitState().words() + ": " + factors;
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
        + shortly(basis)
        + (check.made() ? ")" : "; outside its formula's range)");
  }

  @Override
  public String toString() {
    return "Mount " + chain.mount() + "\n" + weakest();
  }
}

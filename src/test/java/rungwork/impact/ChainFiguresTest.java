package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.LimitState;
import rungwork.check.Verdict;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.joint.Factors;
import rungwork.loadpath.ChainSheet;
import rungwork.quantity.Kind;

/** Checks made up, under a hit of 100 m/s²; a real chain lends its name and its bases. */
class ChainFiguresTest {
  private static final ChainSheet REAL = HitMount.sheet(Factors.UNFACTORED, 5000);
  private static final Basis YIELD = basis(REAL, LimitState.YIELD);
  private static final Basis ULTIMATE = basis(REAL, LimitState.ULTIMATE);
  private static final Part PART = Part.named("lower arm", Zone.FRONT_MOUNTS, mm(150));

  private static Basis basis(ChainSheet sheet, LimitState state) {
    return sheet.sheet().checks().stream()
        .filter(Check::made)
        .map(Check::basis)
        .filter(basis -> basis.limitState() == state)
        .findFirst()
        .orElseThrow();
  }

  private static Check check(String what, Basis basis, Verdict verdict) {
    return new Check(what, "tab", "hole", "hit", basis, verdict, List.of(), "source", "");
  }

  private static Check used(String what, Basis basis, double utilisation) {
    return check(what, basis, new Verdict.Measured(utilisation * 1000, 1000, Kind.FORCE));
  }

  private static Part of(Check... checks) {
    CheckSheet sheet = new CheckSheet("sheet", List.of(checks), List.of(), List.of(), Set.of());
    return ChainFigures.of(PART, new ChainSheet(REAL.chain(), List.of(), List.of(), sheet), 100);
  }

  /** 100/0.8 and 100/0.5 m/s²; high ends 1.4·1.1 times that. */
  @Test
  void the_most_used_check_of_each_limit_state_counts() {
    Part found =
        of(
            used("bends", YIELD, 0.3),
            used("shears", YIELD, 0.8),
            used("tears", ULTIMATE, 0.5),
            used("pulls out", ULTIMATE, 0.2));
    assertEquals(125, found.first().orElseThrow().low(), 1e-9);
    assertEquals(192.5, found.first().orElseThrow().high(), 1e-9);
    assertEquals(200, found.ultimate().orElseThrow().low(), 1e-9);
    assertEquals(308, found.ultimate().orElseThrow().high(), 1e-9);
    assertEquals("shears", found.detail().begins());
    assertEquals("tab of mount lower fore", found.detail().where());
    assertEquals("lower arm", found.name());
    assertEquals(0.15, found.station(), 1e-12);
    assertEquals(
        List.of(
            "utilisations in proportion to the deceleration; high end: 1.4 times the minimum"
                + " strength and a wall 10 % thick"),
        found.detail().notes());
  }

  @Test
  void what_breaks_before_it_yields_first_gives_way_by_breaking() {
    Part found = of(used("bends", YIELD, 0.4), used("tears", ULTIMATE, 0.5));
    assertEquals(200, found.first().orElseThrow().low(), 1e-9);
    assertEquals(200, found.ultimate().orElseThrow().low(), 1e-9);
  }

  @Test
  void without_a_check_on_yield_the_one_on_rupture_is_the_first() {
    Part found = of(used("tears", ULTIMATE, 0.5));
    assertEquals(200, found.first().orElseThrow().low(), 1e-9);
    assertEquals("tears", found.detail().begins());
    Part yields = of(used("bends", YIELD, 0.4));
    assertEquals(250, yields.first().orElseThrow().low(), 1e-9);
    assertEquals(Optional.empty(), yields.ultimate());
  }

  @Test
  void checks_that_were_not_made_are_notes_and_no_figures() {
    Part found =
        of(
            used("bends", YIELD, 0.4),
            used("idle", YIELD, 0),
            check("cracks", YIELD, new Verdict.NotChecked("no history")),
            used(
                "bends by a standard",
                basis(HitMount.sheet(Factors.ROAD, 5000), LimitState.YIELD),
                0.9));
    assertEquals(250, found.first().orElseThrow().low(), 1e-9);
    assertEquals("not checked: cracks of tab", found.detail().notes().get(1));
    assertEquals(2, found.detail().notes().size());
  }

  @Test
  void a_chain_without_figures_says_nothing() {
    Refused.with(
        "mount lower fore has no unfactored check on yield or rupture that was made; part lower arm"
            + " learns nothing from it",
        () -> of(used("idle", YIELD, 0)));
    Refused.with(
        "deceleration of the chain's loads 0 g is not above zero", () -> PART.from(REAL, g(0)));
  }
}

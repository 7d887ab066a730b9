package rungwork.loadpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwork.check.Basis;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.LimitState;
import rungwork.fault.ModelException;
import rungwork.frame.Wrench;
import rungwork.joint.Bolt;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.Joint;
import rungwork.joint.Parts;
import rungwork.joint.Pivot;
import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;
import rungwork.joint.WeldGroup.Parent;
import rungwork.joint.WeldGroup.Run;
import rungwork.joint.WeldGroup.Seam;
import rungwork.loadpath.Face.Direction;

class MountChainTest {
  private static final Face FACE =
      new Face(Corners.at(150, 370, 170), Direction.UP, Direction.LEFT);

  private static WeldGroup weld(String name) {
    return new WeldGroup(
        name,
        Run.bothSides(mm(40), mm(5)),
        Seam.fillet(mm(3), MPa(490)),
        Parent.of(Parts.S355, mm(3)));
  }

  private static MountChain chain(Tab tab) {
    Pivot bolt = new Pivot("bolt", tab, Bolt.Threads.IN_PLANE, Pivot.Stack.of(mm(1), mm(20)));
    return new MountChain("lower fore", FACE, List.of(bolt, tab, weld("weld")));
  }

  private static CornerForces braking() {
    return Corners.twoArms().under("braking", Wrench.force(-1000, 0, 2000));
  }

  private static CornerForces bump() {
    return Corners.twoArms().under("bump", Wrench.force(0, 0, 4000));
  }

  private static String refused(List<Joint> parts) {
    return assertThrows(ModelException.class, () -> new MountChain("lower fore", FACE, parts))
        .getMessage();
  }

  @Test
  void every_part_answers_under_every_load_case_and_both_ways_of_sharing_thrust() {
    ChainSheet sheet = chain(Parts.tab()).under(List.of(bump(), braking()), Factors.ROAD);
    List<String> cases =
        sheet.sheet().checks().stream().map(Check::loadCase).distinct().sorted().toList();
    assertEquals(
        List.of("braking, thrust on the other pivot", "braking, thrust on this pivot", "bump"),
        cases);
    List<String> parts =
        sheet.sheet().checks().stream().map(Check::part).distinct().sorted().toList();
    assertEquals(List.of("bolt", "front tab", "weld"), parts);
  }

  @Test
  void parts_are_ranked_worst_first_and_within_one_basis_only() {
    ChainSheet sheet = chain(Parts.tab()).under(List.of(bump(), braking()), Factors.ROAD);
    Map<Basis, List<Check>> ranked = sheet.ranked();
    assertTrue(ranked.size() > 1, ranked.keySet().toString());
    ranked.forEach(
        (basis, checks) -> {
          double last = Double.POSITIVE_INFINITY;
          for (Check check : checks) {
            assertEquals(basis, check.basis());
            double utilisation = check.utilisation().orElseThrow();
            assertTrue(utilisation <= last, basis + ": " + checks);
            last = utilisation;
          }
        });
    assertTrue(ranked.keySet().stream().noneMatch(b -> b.limitState() == LimitState.PROPORTION));
  }

  @Test
  void the_first_of_a_basis_is_the_largest_of_all_checks_made_on_it() {
    ChainSheet sheet = chain(Parts.tab()).under(List.of(bump(), braking()), Factors.ROAD);
    sheet
        .ranked()
        .forEach(
            (basis, ranked) -> {
              double largest =
                  sheet.sheet().checks().stream()
                      .filter(check -> check.basis().equals(basis) && check.made())
                      .mapToDouble(check -> check.utilisation().orElseThrow())
                      .max()
                      .orElse(0);
              assertTrue(ranked.get(0).utilisation().orElseThrow() >= largest);
            });
  }

  @Test
  void the_weakest_is_named_with_its_load_case_and_what_was_not_checked() {
    String text = chain(Parts.tab()).under(List.of(braking()), Factors.ROAD).weakest();
    Check first =
        chain(Parts.tab())
            .under(List.of(braking()), Factors.ROAD)
            .ranked()
            .values()
            .iterator()
            .next()
            .get(0);
    assertTrue(text.startsWith("weakest: " + first.part() + ", "), text);
    assertTrue(text.contains(", under braking, thrust on this pivot ("), text);
    assertTrue(text.contains("not checked: "), text);
    assertTrue(text.contains("strength of arms and links"), text);
  }

  @Test
  void a_sheet_keeps_its_caution() {
    ChainSheet sheet = chain(Parts.tab()).under(List.of(bump()), Factors.ROAD);
    assertTrue(sheet.sheet().cautions().contains(Caution.SCREENING));
  }

  @Test
  void a_hit_carries_the_stronger_caution() {
    ChainSheet road = chain(Parts.tab()).under(List.of(bump()), Factors.ROAD);
    ChainSheet hit = chain(Parts.tab()).under(List.of(bump()), Factors.UNFACTORED);
    assertTrue(hit.sheet().cautions().contains(Caution.IMPACT));
    assertEquals(Set.of(Caution.SCREENING), road.sheet().cautions());
  }

  @Test
  void a_corner_that_is_hardly_held_is_among_the_assumptions() {
    SuspensionMember near =
        SuspensionMember.Bar.toUpright(
            "tie rod", Corners.mount("rack", -8, 400, 270), Corners.at(-8, 600, 270));
    Corner corner =
        new Corner(
            "front left",
            Corners.hub(),
            List.of(Corners.lower(), Corners.upper(), near, Corners.spring(0.6)));
    ChainSheet sheet =
        chain(Parts.tab())
            .under(List.of(corner.under("bump", Wrench.force(0, 0, 4000))), Factors.ROAD);
    assertTrue(sheet.sheet().assumptions().contains(corner.weakness().orElseThrow()));
  }

  @Test
  void the_load_is_proportional_to_the_tyres_force_where_the_rule_is() {
    Factors factors = Factors.UNFACTORED;
    Wrench tyre = Wrench.force(0, 0, 2000);
    Corner corner = Corners.twoArms();
    double one = tension(chain(Parts.tab()).under(List.of(corner.under("a", tyre)), factors));
    double two =
        tension(chain(Parts.tab()).under(List.of(corner.under("a", tyre.times(2))), factors));
    assertEquals(2 * one, two, 1e-9 * two);
  }

  private static double tension(ChainSheet sheet) {
    return sheet.sheet().about("weld").governing().orElseThrow().utilisation().orElseThrow();
  }

  @Test
  void road_cases_and_a_hit_stand_on_one_sheet_apart() {
    MountChain chain = chain(Parts.tab());
    ChainSheet both =
        chain
            .under(List.of(bump()), Factors.ROAD)
            .and(chain.under(List.of(braking()), Factors.UNFACTORED));
    assertEquals(
        List.of(bump().loadCase(), "braking"),
        both.corners().stream().map(CornerForces::loadCase).toList());
    assertEquals(3, both.arrivals().size());
    both.ranked()
        .values()
        .forEach(parts -> assertEquals(1, parts.stream().map(Check::basis).distinct().count()));
    assertEquals(
        "mount lower fore and mount lower fore are not the same parts; keep their sheets apart",
        assertThrows(
                ModelException.class,
                () ->
                    both.and(
                        chain(
                                new Tab(
                                    "other",
                                    Parts.tab().material(),
                                    Parts.tab().plate(),
                                    Parts.tab().eye()))
                            .under(List.of(bump()), Factors.ROAD)))
            .getMessage());
  }

  @Test
  void stated_forces_load_a_mount_without_a_wheel_and_only_their_own() {
    MountChain chain = chain(Parts.tab());
    MountForce pull =
        new MountForce(Corners.mount("lower fore", 150, 400, 170), "belt", Wrench.force(0, 0, 1e4));
    ChainSheet sheet = chain.under(List.of(pull), Factors.UNFACTORED, List.of("a stated pull"));
    assertTrue(sheet.corners().isEmpty());
    assertTrue(sheet.sheet().assumptions().contains("a stated pull"));
    MountForce elsewhere =
        new MountForce(Corners.mount("seat", 0, 400, 170), "belt", Wrench.force(0, 0, 1e4));
    assertEquals(
        "belt pushes mount seat, not mount lower fore",
        assertThrows(
                ModelException.class,
                () -> chain.under(List.of(elsewhere), Factors.UNFACTORED, List.of()))
            .getMessage());
  }

  @Test
  void a_face_names_where_its_directions_point() {
    assertEquals("forward", FACE.pin().words());
    assertEquals("about up", new Direction(0, 0.5, 1).words());
  }

  @Test
  void a_tab_and_its_fold_stand_in_one_chain() {
    Tab tab = Parts.tab();
    MountChain chain =
        new MountChain(
            "lower fore", FACE, List.of(tab, tab.folded(mm(5), mm(25)), tab.asHarnessTab()));
    List<String> asked =
        chain.under(List.of(bump()), Factors.ROAD).sheet().checks().stream()
            .filter(check -> check.part().equals("front tab"))
            .map(Check::what)
            .toList();
    assertTrue(asked.contains("bend radius"), asked.toString());
    assertTrue(asked.contains("harness tab, thickness"), asked.toString());
  }

  @Test
  void a_chain_without_parts_or_cases_is_refused() {
    assertEquals("mount lower fore has no parts; name what it is made of", refused(List.of()));
    assertEquals(
        "mount lower fore has two parts named weld", refused(List.of(weld("weld"), weld("weld"))));
    MountChain chain = chain(Parts.tab());
    assertEquals(
        "mount lower fore is under no load case; give it one at least",
        assertThrows(ModelException.class, () -> chain.under(List.of(), Factors.ROAD))
            .getMessage());
  }

  @Test
  void repeated_load_adds_the_damage_of_each_swing() {
    CornerForces standing = Corners.twoArms().under("standing", Wrench.force(0, 0, 2000));
    MountChain chain = chain(Parts.tab());
    MountChain.Swing stops = new MountChain.Swing("stops", standing, braking(), 5000);
    MountChain.Swing bumps = new MountChain.Swing("bumps", standing, bump(), 200);
    CheckSheet sheet = chain.repeated(List.of(stops, bumps), 1.35);
    assertEquals(
        List.of("root of a fillet weld", "toe of a fillet weld"),
        sheet.checks().stream().map(Check::where).sorted().toList());
    double both = cube(chain.repeated(List.of(stops, bumps), 1.35));
    double apart =
        cube(chain.repeated(List.of(stops), 1.35)) + cube(chain.repeated(List.of(bumps), 1.35));
    assertEquals(apart, both, 1e-9 * both);
  }

  /** Damage goes with the third power of the equal range. */
  private static double cube(CheckSheet sheet) {
    return Math.pow(sheet.checks().get(0).utilisation().orElseThrow(), 3);
  }

  @Test
  void a_swing_takes_the_worse_way_of_sharing_a_thrust() {
    CornerForces standing = Corners.twoArms().under("standing", Wrench.force(0, 0, 2000));
    CornerForces thrust = Corners.twoArms().under("thrust", Wrench.force(-1000, 0, 2000));
    WeldGroup weld = weld("weld");
    FaceLoad from = FACE.load(standing.on("lower fore").get(0), Factors.UNFACTORED);
    FaceLoad to = FACE.load(thrust.on("lower fore").get(1), Factors.UNFACTORED);
    double range = weld.rootRange(from, to);
    CheckSheet sheet =
        chain(Parts.tab())
            .repeated(List.of(new MountChain.Swing("stops", standing, thrust, 2e6)), 1);
    double root =
        sheet.checks().stream()
            .filter(check -> check.where().equals("root of a fillet weld"))
            .findFirst()
            .orElseThrow()
            .verdict()
            .numbers()
            .orElseThrow()
            .demand();
    assertEquals(range, root, 1e-6 * range);
    assertTrue(
        sheet
            .assumptions()
            .contains("stops: 2000000 times from standing to thrust, counts stated by the user"),
        sheet.assumptions().toString());
  }

  @Test
  void a_weld_that_misses_its_tab_is_refused() {
    WeldGroup wide =
        new WeldGroup(
            "weld",
            Run.bothSides(mm(60), mm(5)),
            Seam.fillet(mm(3), MPa(490)),
            Parent.of(Parts.S355, mm(3)));
    assertEquals(
        "run 1 of weld weld reaches 30.00 mm along the foot of tab front tab, which ends at 20.00"
            + " mm; a weld lies on the outline of what it holds",
        refused(List.of(Parts.tab(), wide)));
    WeldGroup apart =
        new WeldGroup(
            "weld",
            Run.bothSides(mm(40), mm(50)),
            Seam.fillet(mm(3), MPa(490)),
            Parent.of(Parts.S355, mm(3)));
    assertEquals(
        "run 1 of weld weld reaches 25.00 mm along the pin of tab front tab, which ends at 2.500"
            + " mm; a weld lies on the outline of what it holds",
        refused(List.of(Parts.tab(), apart)));
  }
}

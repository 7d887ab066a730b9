package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.check.Examples.BAR;
import static rungwork.check.Examples.NONE;
import static rungwork.check.Examples.ONE_METRE;
import static rungwork.check.Examples.S355;
import static rungwork.check.Examples.STEEL;
import static rungwork.check.Examples.TUBE;
import static rungwork.check.Examples.cantilever;
import static rungwork.check.Examples.only;
import static rungwork.check.Examples.rated;
import static rungwork.check.Examples.result;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.Member.Weld;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.NotChecked;
import rungwork.check.Verdict.OutsideRange;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.Material;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.material.UnratedMaterial;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;
import rungwork.solve.Solver;

class MemberChecksTest {
  private static final Stock STOCK = new Stock(TUBE, S355);
  private static final Properties P = TUBE.properties();
  private static final Stock CHANNEL =
      new Stock(Section.foldedChannel(mm(80), mm(40), mm(3), mm(3)), S355);
  private static final Stock FLAT = new Stock(Section.flatBar(mm(80), mm(10)), S355);

  @Test
  void pure_bending_is_checked_against_yield_by_the_elastic_modulus() {
    Check check = stress(STOCK, Wrench.moment(0, 1000, 0), NONE);
    Measured numbers = (Measured) check.verdict();
    assertEquals(1000 / P.wely(), numbers.demand(), 1e-6 * numbers.demand());
    assertEquals(355e6, numbers.capacity());
    assertEquals(Kind.STRESS, numbers.kind());
    assertEquals("bar", check.part());
    assertEquals("test load", check.loadCase());
    assertEquals(
        "EN 1993-1-1:2005, 6.2.1(5); S355: a standard (read in the source)", check.source());
  }

  @Test
  void tension_and_both_moments_add_at_a_corner() {
    double stress = demand(stress(STOCK, new Wrench(20e3, 0, 0, 0, 500, 300), NONE).verdict());
    double corners = 20e3 / P.area() + 500 / P.wely() + 300 / P.welz();
    assertTrue(stress < corners, "rounded corners carry less than a sharp one would");
    assertTrue(stress > 0.9 * corners);
  }

  @Test
  void twist_counts_by_the_square_root_of_three() {
    Check check = stress(STOCK, Wrench.moment(500, 0, 0), NONE);
    double tau = Math.abs(result(check, "τ"));
    assertEquals(Math.sqrt(3) * tau, demand(check.verdict()), 1e-9 * tau);
    double worst = TUBE.points().stream().mapToDouble(p -> Math.abs(p.perT())).max().orElseThrow();
    assertEquals(500 * worst, tau, 1e-9 * tau);
  }

  @Test
  void the_demand_is_the_result_of_the_working_shown() {
    Check check = stress(STOCK, new Wrench(-5e3, 700, -900, 200, 100, 50), NONE);
    assertEquals(result(check, "σv"), demand(check.verdict()), 1e-9 * demand(check.verdict()));
    assertEquals(result(check, "fd"), ((Measured) check.verdict()).capacity());
  }

  @Test
  void the_design_factor_divides_the_capacity_and_is_named_in_the_basis() {
    Check check = stress(STOCK, Wrench.moment(0, 1000, 0), DesignFactor.ROAD);
    assertEquals(355e6 / 1.5, ((Measured) check.verdict()).capacity(), 1);
    assertEquals(DesignFactor.ROAD.onYield(), check.basis());
  }

  @Test
  void the_place_is_named_by_its_node_and_point() {
    Check check = stress(STOCK, Wrench.force(0, 0, -500), NONE);
    assertTrue(check.where().startsWith("at root, "), check.where());
  }

  @Test
  void a_place_between_the_nodes_is_told_by_its_part_of_the_way() {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(1, 0, 0))
            .beam(
                Beam.rigid("bar", "a", "b", STOCK)
                    .released(
                        java.util.Set.of(rungwork.frame.Release.OUT_OF_PLANE_BENDING),
                        java.util.Set.of(rungwork.frame.Release.OUT_OF_PLANE_BENDING)))
            .support(Support.fixed("a"))
            .support(Support.fixed("b"))
            .build();
    Response response =
        Solver.of(frame).solve(LoadCase.of("dead", new Load.AlongBeam("bar", 0, 0, -1000)));
    Check check = only("combined stress", MemberChecks.of(BAR, response, NONE));
    assertTrue(check.where().startsWith("50 % of the way from a to b, "), check.where());
  }

  @Test
  void a_part_in_tension_gets_no_column_check() {
    List<Check> checks = MemberChecks.of(BAR, cantilever(STOCK, Wrench.force(20e3, 0, 0)), NONE);
    assertFalse(has("column buckling with bending", checks));
    assertFalse(has("wall slenderness", checks));
  }

  @Test
  void a_central_force_alone_gives_the_column_its_reduction_factor() {
    List<Check> checks = MemberChecks.of(BAR, cantilever(STOCK, Wrench.force(-50e3, 0, 0)), NONE);
    Check check = only("column buckling with bending", checks);
    double weak = Math.PI * Math.PI * 210e9 * P.iz();
    double bar = Math.sqrt(P.area() * 355e6 / weak);
    double phi = 0.5 * (1 + 0.49 * (bar - 0.2) + bar * bar);
    double chi = 1 / (phi + Math.sqrt(phi * phi - bar * bar));
    assertEquals(50e3 / (chi * P.area() * 355e6), demand(check.verdict()), 1e-9);
    assertEquals(
        "whole part; strong axis: bending out of the frame's plane; effective lengths: full length",
        check.where());
  }

  @Test
  void force_and_both_moments_interact_by_equations_6_61_and_6_62() {
    Wrench load = new Wrench(-50e3, 0, 0, 0, 600, 250);
    Check check =
        only(
            "column buckling with bending",
            MemberChecks.of(BAR, cantilever(STOCK, load), DesignFactor.ROAD));
    double n1 = result(check, "n₁");
    double n2 = result(check, "n₂");
    double m1 = 1.5 * 600 / (P.wely() * 355e6);
    double m2 = 1.5 * 250 / (P.welz() * 355e6);
    double k1 = 1 + 0.6 * Math.min(1, result(check, "λ̄₁")) * n1;
    double k2 = 1 + 0.6 * Math.min(1, result(check, "λ̄₂")) * n2;
    double expected = Math.max(n1 + k1 * m1 + k2 * m2, n2 + 0.8 * k1 * m1 + k2 * m2);
    assertEquals(expected, demand(check.verdict()), 1e-9);
  }

  @Test
  void a_tube_on_its_flat_has_its_strong_axis_in_the_frames_plane() {
    Stock flat = new Stock(TUBE.turned(), S355);
    Check check =
        only(
            "column buckling with bending",
            MemberChecks.of(BAR, cantilever(flat, Wrench.force(-50e3, 0, 0)), NONE));
    assertTrue(check.where().contains("strong axis: bending in the frame's plane"));
    assertEquals(
        1 / result(check, "χ₂") * 50e3 / (P.area() * 355e6), demand(check.verdict()), 1e-9);
  }

  @Test
  void each_axis_buckles_over_its_own_length() {
    Member braced =
        new Member("bar", List.of("bar"), new BucklingLengths(0.25, 2, "braced"), List.of());
    Check check =
        only(
            "column buckling with bending",
            MemberChecks.of(braced, cantilever(STOCK, Wrench.force(-50e3, 0, 0)), NONE));
    double outOfPlane = Math.PI * Math.PI * 210e9 * P.iy() / 4;
    assertEquals(outOfPlane, result(check, "Ncr₁"), 1e-6 * outOfPlane);
    double inPlane = Math.PI * Math.PI * 210e9 * P.iz() * 16;
    assertEquals(inPlane, result(check, "Ncr₂"), 1e-6 * inPlane);
  }

  @Test
  void johnsons_force_is_shown_for_comparison_and_says_so() {
    Check check =
        only(
            "column buckling with bending",
            MemberChecks.of(BAR, cantilever(STOCK, Wrench.force(-50e3, 0, 0)), NONE));
    Step last = check.working().get(check.working().size() - 1);
    assertEquals("NJ₂", last.formula().result().letter());
    assertTrue(last.formula().source().contains("for comparison only: it knows no imperfection"));
    double real = result(check, "χ₂") * P.area() * 355e6;
    assertTrue(last.result() > real, "a perfect column carries more than a real one");
  }

  @Test
  void a_weld_that_lowers_the_strength_gets_a_check_of_its_own() {
    Stock stock = new Stock(TUBE, rated("4130", 517e6, 414e6));
    Member welded = new Member("bar", List.of("bar"), ONE_METRE, List.of(new Weld("joint", 0)));
    List<Check> checks =
        MemberChecks.of(welded, cantilever(stock, Wrench.force(0, 0, -1000)), NONE);
    Measured plain = (Measured) only("combined stress", checks).verdict();
    Measured beside = (Measured) only("combined stress beside a weld", checks).verdict();
    assertEquals(517e6, plain.capacity());
    assertEquals(414e6, beside.capacity());
    assertEquals(0.975 * 1000 / P.wely(), plain.demand(), 0.01 * plain.demand());
    assertEquals(1000 / P.wely(), beside.demand(), 0.01 * beside.demand());
    assertTrue(only("combined stress beside a weld", checks).where().startsWith("at root, "));
  }

  @Test
  void a_weld_that_lowers_nothing_gets_none() {
    Member welded = new Member("bar", List.of("bar"), ONE_METRE, List.of(new Weld("joint", 0)));
    List<Check> checks =
        MemberChecks.of(welded, cantilever(STOCK, Wrench.force(0, 0, -1000)), NONE);
    assertFalse(has("combined stress beside a weld", checks));
  }

  @Test
  void a_part_that_lies_all_beside_welds_has_no_other_stress_check() {
    Stock stock = new Stock(TUBE, rated("4130", 517e6, 414e6));
    List<Weld> welds =
        java.util.stream.IntStream.rangeClosed(0, 25)
            .mapToObj(i -> new Weld("bead " + i, 0.04 * i))
            .toList();
    List<Check> checks =
        MemberChecks.of(
            new Member("bar", List.of("bar"), ONE_METRE, welds),
            cantilever(stock, Wrench.force(0, 0, -1000)),
            NONE);
    assertFalse(has("combined stress", checks));
    assertTrue(has("combined stress beside a weld", checks));
  }

  @Test
  void a_material_without_a_guaranteed_strength_is_not_checked() {
    Material erw =
        new UnratedMaterial("ERW 1010", STEEL, new Source("a mill", Source.Tag.FROM_MEMORY));
    List<Check> checks =
        MemberChecks.of(
            BAR, cantilever(new Stock(TUBE, erw), new Wrench(-5e3, 0, 0, 0, 500, 0)), NONE);
    assertEquals(
        List.of(
            "combined stress",
            "column buckling with bending",
            "lateral-torsional buckling",
            "wall slenderness"),
        checks.stream().map(Check::what).toList());
    checks.forEach(
        check ->
            assertEquals(
                new NotChecked(
                    "ERW 1010 has no guaranteed yield strength; state it with the evidence for it,"
                        + " such as a mill certificate"),
                check.verdict()));
    assertEquals(CheckSheet.Outcome.NOT_JUDGED, CheckSheet.of("bar", checks).outcome());
  }

  @Test
  void a_strength_that_the_user_stated_is_said_to_be_so_on_every_check() {
    List<Check> checks =
        MemberChecks.of(
            BAR,
            cantilever(new Stock(TUBE, Examples.stated()), new Wrench(-5e3, 0, 0, 0, 500, 0)),
            NONE);
    assertEquals(4, checks.size());
    checks.forEach(
        check -> assertEquals("strength stated by the user: mill certificate 17", check.caution()));
    assertTrue(checks.get(0).source().endsWith("mill certificate 17 (stated by the user)"));
  }

  /** EN 1993-1-5, 4.4 by hand: kσ = 4 in uniform compression. */
  @Test
  void a_wall_that_buckles_before_it_yields_counts_with_its_effective_width() {
    Section section = Section.rectangularTube(mm(120), mm(60), mm(1.5));
    Stock thin = new Stock(section, S355);
    List<Check> checks = MemberChecks.of(BAR, cantilever(thin, Wrench.force(-5e3, 0, 0)), NONE);
    double epsilon = Math.sqrt(235.0 / 355);
    double gone = 0;
    for (double flat : new double[] {115.5, 55.5}) {
      double bar = flat / 1.5 / (28.4 * epsilon * 2);
      gone += 2 * 1.5e-3 * flat / 1e3 * (1 - (bar - 0.22) / (bar * bar));
    }
    double left = section.properties().area() - gone;
    Check stress = only("combined stress", checks);
    assertTrue(stress.made());
    assertEquals(5e3 / left, demand(stress.verdict()), 1e-6 * 5e3 / left);
    Check column = only("column buckling with bending", checks);
    assertTrue(column.made());
    assertEquals(left * 355e6, result(column, "Npl"), 1);
    double gross = Math.PI * Math.PI * 210e9 * section.properties().iz();
    assertEquals(gross, result(column, "Ncr₂"), 1e-6 * gross, "the critical force is the whole's");
    Check wall = only("wall slenderness", checks);
    assertEquals(new Measured(77, 500, Kind.RATIO), rounded((Measured) wall.verdict()));
    assertTrue(
        wall.where().endsWith(": class 4, its strength counted with effective widths"),
        wall.where());
    assertTrue(wall.source().contains("EN 1993-1-5:2006, 4.4"));
  }

  private static Measured rounded(Measured numbers) {
    return new Measured(Math.rint(numbers.demand()), numbers.capacity(), numbers.kind());
  }

  @Test
  void a_thin_flange_in_bending_shifts_the_centroid_and_raises_the_stress() {
    Section section = Section.rectangularTube(mm(60), mm(120), mm(1.5));
    Stock thin = new Stock(section, S355);
    Check stress =
        only(
            "combined stress",
            MemberChecks.of(BAR, cantilever(thin, Wrench.moment(0, 500, 0)), NONE));
    double bar = 77 / (28.4 * Math.sqrt(235.0 / 355) * 2);
    double gone = 1.5e-3 * 0.1155 * (1 - (bar - 0.22) / (bar * bar));
    Properties p = section.properties();
    double arm = 0.03 - 0.00075;
    double shift = gone * arm / (p.area() - gone);
    double left =
        p.iy() - gone * (arm * arm + 1.5e-3 * 1.5e-3 / 12) - (p.area() - gone) * shift * shift;
    double expected = 500 * (0.03 + shift) / left;
    assertEquals(expected, demand(stress.verdict()), 1e-3 * expected);
    assertTrue(expected > 1.1 * 500 / p.wely());
  }

  @Test
  void a_thin_outstand_loses_its_toe() {
    Section section = Section.foldedChannel(mm(80), mm(60), mm(2), mm(2));
    Check stress =
        only(
            "combined stress",
            MemberChecks.of(
                BAR, cantilever(new Stock(section, S355), Wrench.force(-5e3, 0, 0)), NONE));
    double epsilon = Math.sqrt(235.0 / 355);
    double toe = 56.0 / 2 / (28.4 * epsilon * Math.sqrt(0.43));
    double web = 72.0 / 2 / (28.4 * epsilon * 2);
    double gone =
        2 * 2e-3 * 0.056 * (1 - (toe - 0.188) / (toe * toe))
            + 2e-3 * 0.072 * (1 - (web - 0.22) / (web * web));
    double left = section.properties().area() - gone;
    double bending = Math.abs(result(stress, "σ")) - 5e3 / left;
    assertTrue(bending > 0, "the force acts beside what is left");
    assertTrue(
        stress.working().get(0).toString().contains("5.000 kN"), stress.working().toString());
  }

  @Test
  void a_thin_round_tube_stays_not_checked_and_puts_the_strength_in_doubt() {
    Stock thin = new Stock(Section.roundTube(mm(120), mm(1.5)), S355);
    List<Check> checks = MemberChecks.of(BAR, cantilever(thin, Wrench.force(-5e3, 0, 0)), NONE);
    assertEquals(
        new NotChecked(
            "wall is of class 4: it buckles before it yields; EN 1993-1-6 is for such round tubes"
                + " and is not worked out here"),
        only("wall slenderness", checks).verdict());
    OutsideRange stress = (OutsideRange) only("combined stress", checks).verdict();
    assertEquals(
        "a wall is not shown to reach yield before it buckles", stress.reason(Units.METRIC));
    assertTrue(only("column buckling with bending", checks).verdict() instanceof OutsideRange);
  }

  @Test
  void a_web_in_bending_may_be_more_slender_than_one_in_compression() {
    Stock deep = new Stock(Section.rectangularTube(mm(100), mm(40), mm(2)), S355);
    Check compressed =
        only(
            "wall slenderness",
            MemberChecks.of(BAR, cantilever(deep, Wrench.force(-5e3, 0, 0)), NONE));
    assertTrue(compressed.where().contains("class 4"), "c/t 47 is over 42·ε = 34.2");
    Check bent =
        only(
            "wall slenderness",
            MemberChecks.of(BAR, cantilever(deep, Wrench.moment(0, 1000, 0)), NONE));
    assertFalse(bent.where().contains("class 4"), "c/t 47 is under 124·ε = 101");
    assertEquals(LimitState.PROPORTION, bent.basis().limitState());
  }

  @Test
  void a_stocky_tube_tells_its_class() {
    Check check =
        only(
            "wall slenderness",
            MemberChecks.of(BAR, cantilever(STOCK, Wrench.force(-5e3, 0, 0)), NONE));
    assertEquals((80.0 - 9) / 3, ((Measured) check.verdict()).demand(), 1e-9);
    assertEquals(42 * Math.sqrt(235.0 / 355), ((Measured) check.verdict()).capacity(), 1e-9);
    assertTrue(check.where().endsWith(" at root: class 1"), check.where());
  }

  @Test
  void a_rectangular_tube_is_shown_to_be_too_stocky_to_escape_sideways() {
    Check check =
        only(
            "lateral-torsional buckling",
            MemberChecks.of(BAR, cantilever(STOCK, Wrench.moment(0, 1000, 0)), NONE));
    double critical = Math.PI * Math.sqrt(210e9 * P.iz() * STEEL.shearModulus() * P.it());
    assertEquals(Math.sqrt(P.wely() * 355e6 / critical), demand(check.verdict()), 1e-9);
    assertEquals(0.4, ((Measured) check.verdict()).capacity());
  }

  @Test
  void a_square_tube_cannot_escape_sideways_and_is_not_asked() {
    Stock square = new Stock(Section.squareTube(mm(50), mm(3)), S355);
    List<Check> checks = MemberChecks.of(BAR, cantilever(square, Wrench.moment(0, 1000, 0)), NONE);
    assertFalse(has("lateral-torsional buckling", checks));
    assertTrue(
        MemberChecks.assumptions().stream()
            .anyMatch(line -> line.contains("EN 1993-1-1, 6.3.2.1(2)")));
  }

  @Test
  void bending_about_the_weak_axis_cannot_escape_sideways() {
    List<Check> checks = MemberChecks.of(BAR, cantilever(STOCK, Wrench.moment(0, 0, 1000)), NONE);
    assertFalse(has("lateral-torsional buckling", checks));
  }

  @Test
  void a_very_long_tube_could_escape_sideways_and_is_not_checked() {
    Member slender =
        new Member("bar", List.of("bar"), new BucklingLengths(5, 5, "no bracing"), List.of());
    Check check =
        only(
            "lateral-torsional buckling",
            MemberChecks.of(slender, cantilever(STOCK, Wrench.moment(0, 1000, 0)), NONE));
    assertEquals(
        new NotChecked(
            "the tube is so long that it could escape sideways; a resistance to lateral-torsional"
                + " buckling is not worked out here"),
        check.verdict());
  }

  @Test
  void an_open_section_that_carries_twist_is_not_checked_while_its_ends_are_not_known() {
    List<Check> checks =
        MemberChecks.of(BAR, cantilever(CHANNEL, new Wrench(-5e3, 0, 0, 40, 500, 0)), NONE);
    Check torsion = only("torsion of an open section", checks);
    assertEquals(
        new NotChecked(
            "it carries twist, and nothing says how far its ends hold the warping; the working"
                + " shows the shear stress for free ends and the warping stress for held ends, both"
                + " for the torque of a frame whose ends are free; a frame with held ends carries"
                + " more; a section that has to carry twist and is not checked for it cannot be"
                + " named the choice"),
        torsion.verdict());
    assertEquals(
        40
            * CHANNEL.section().points().stream()
                .mapToDouble(p -> Math.abs(p.perT()))
                .max()
                .orElseThrow(),
        result(torsion, "τT"),
        1);
    assertEquals(
        "the stress of warping is left out",
        only("combined stress", checks).verdict().reason(Units.METRIC));
  }

  @Test
  void an_open_section_without_twist_has_its_stress_checked() {
    List<Check> checks = MemberChecks.of(BAR, cantilever(CHANNEL, Wrench.moment(0, 500, 0)), NONE);
    assertFalse(has("torsion of an open section", checks));
    assertTrue(only("combined stress", checks).made());
  }

  @Test
  void an_open_section_under_compression_is_checked_for_bending_and_twisting_at_once() {
    Check check =
        only(
            "column buckling with bending",
            MemberChecks.of(BAR, cantilever(CHANNEL, Wrench.force(-5e3, 0, 0)), DesignFactor.ROAD));
    Properties p = CHANNEL.section().properties();
    double critical = TwistingExample.critical(STEEL, p, new double[] {1, 1, 1});
    assertEquals(critical, result(check, "NcrTF"), 1e-6 * critical);
    assertTrue(critical < Math.PI * Math.PI * 210e9 * p.iy(), "twisting makes it weaker");
    double chi = Math.min(result(check, "χ₂"), Math.min(result(check, "χ₁"), result(check, "χTF")));
    double share = 1.5 * 5e3 / (chi * p.area() * 355e6);
    assertEquals(Math.pow(share, 0.8), demand(check.verdict()), 1e-9);
    assertTrue(check.made());
  }

  @Test
  void an_open_column_that_also_bends_loses_more_than_both_shares_together() {
    Check check =
        only(
            "column buckling with bending",
            MemberChecks.of(BAR, cantilever(CHANNEL, new Wrench(-5e3, 0, 0, 0, 300, 20)), NONE));
    double n = result(check, "n");
    assertTrue(demand(check.verdict()) > n, check.toString());
    assertTrue(check.source().contains("EN 1993-1-3:2006, 6.2.5(2)"));
  }

  @Test
  void an_open_section_or_a_flat_bar_is_checked_for_escaping_sideways() {
    for (Stock stock : List.of(CHANNEL, FLAT)) {
      Check check =
          only(
              "lateral-torsional buckling",
              MemberChecks.of(BAR, cantilever(stock, Wrench.moment(0, 500, 0)), DesignFactor.ROAD));
      Properties p = stock.section().properties();
      double twist = STEEL.shearModulus() * p.it() + Math.pow(Math.PI, 2) * 210e9 * p.iw();
      double critical = Math.PI * Math.sqrt(210e9 * p.iz() * twist);
      double bar = Math.sqrt(p.wely() * 355e6 / critical);
      double phi = 0.5 * (1 + 0.76 * (bar - 0.2) + bar * bar);
      double chi = 1 / (phi + Math.sqrt(phi * phi - bar * bar));
      assertEquals(critical, result(check, "Mcr"), 1e-6 * critical);
      assertEquals(1.5 * 500 / (chi * p.wely() * 355e6), demand(check.verdict()), 1e-9);
      assertEquals(DesignFactor.ROAD.onYield(), check.basis());
      assertTrue(check.made());
    }
  }

  @Test
  void bending_about_the_weak_axis_takes_its_share_of_a_beam_that_could_escape() {
    double strong =
        demand(
            only(
                    "lateral-torsional buckling",
                    MemberChecks.of(BAR, cantilever(FLAT, Wrench.moment(0, 300, 0)), NONE))
                .verdict());
    double both =
        demand(
            only(
                    "lateral-torsional buckling",
                    MemberChecks.of(BAR, cantilever(FLAT, Wrench.moment(0, 300, 50)), NONE))
                .verdict());
    double share = 50 / (FLAT.section().properties().welz() * 355e6);
    assertEquals(share, both - strong, 1e-9);
  }

  @Test
  void a_moment_that_falls_to_nothing_may_be_larger_than_an_even_one() {
    Check even =
        only(
            "lateral-torsional buckling",
            MemberChecks.of(BAR, cantilever(CHANNEL, Wrench.moment(0, 500, 0)), NONE));
    Check falling =
        only(
            "lateral-torsional buckling",
            MemberChecks.of(BAR, cantilever(CHANNEL, Wrench.force(0, 0, 500)), NONE));
    assertEquals(1.77, result(falling, "Mcr") / result(even, "Mcr"), 1e-9);
  }

  @Test
  void a_channel_that_is_wider_than_deep_is_not_symmetric_about_its_strong_axis() {
    Stock wide = new Stock(Section.foldedChannel(mm(40), mm(60), mm(3), mm(3)), S355);
    assertEquals(
        new NotChecked(
            "the section is not symmetric about its strong axis; the critical moment of such"
                + " sections is not worked out here"),
        only(
                "lateral-torsional buckling",
                MemberChecks.of(BAR, cantilever(wide, Wrench.moment(0, 0, 500)), NONE))
            .verdict());
  }

  @Test
  void a_solid_bar_under_compression_is_outside_the_rule() {
    Check check =
        only(
            "column buckling with bending",
            MemberChecks.of(BAR, cantilever(FLAT, Wrench.force(-5e3, 0, 0)), NONE));
    assertEquals(
        "the moment factors of EN 1993-1-1:2005, annex B, are for hollow and I-sections, not for"
            + " solid bars",
        check.verdict().reason(Units.METRIC));
  }

  @Test
  void aluminium_is_outside_the_steel_rules() {
    RatedMaterial aluminium =
        new RatedMaterial(
            "6061-T6",
            new Elasticity(69e9, 0.33, 2700),
            new RatedMaterial.Strength(240e6, 290e6, 115e6, 0.08),
            new Source("a rule book", Source.Tag.READ));
    List<Check> checks =
        MemberChecks.of(
            BAR, cantilever(new Stock(TUBE, aluminium), new Wrench(-5e3, 0, 0, 0, 500, 0)), NONE);
    String reason = "outside EN 1993-1-1: 6061-T6 is not steel";
    assertEquals(new NotChecked(reason), only("wall slenderness", checks).verdict());
    assertEquals(reason, only("lateral-torsional buckling", checks).verdict().reason(Units.METRIC));
    assertTrue(only("column buckling with bending", checks).verdict() instanceof OutsideRange);
    assertTrue(only("combined stress", checks).verdict() instanceof OutsideRange);
  }

  @Test
  void steel_beyond_the_last_grade_is_outside_the_rules() {
    Check check =
        only(
            "wall slenderness",
            MemberChecks.of(
                BAR,
                cantilever(new Stock(TUBE, rated("ultra", 900e6, 900e6)), Wrench.force(-5e3, 0, 0)),
                NONE));
    assertEquals(
        new NotChecked(
            "outside EN 1993-1-1 and EN 1993-1-12: ultra is stronger than grade S700, the last"
                + " that they cover"),
        check.verdict());
  }

  @Test
  void a_section_without_stress_points_is_not_checked() {
    Section blank = new Section("blank", P, List.of(), List.of());
    Check check =
        only(
            "combined stress",
            MemberChecks.of(
                BAR, cantilever(new Stock(blank, S355), Wrench.force(20e3, 0, 0)), NONE));
    assertEquals(new NotChecked("section blank has no stress points"), check.verdict());
  }

  @Test
  void a_round_tube_is_classed_by_its_diameter_and_its_most_compressed_fibre() {
    double d = 0.0603;
    double t = 0.0032;
    Section tube = Section.roundTube(mm(d * 1000), mm(t * 1000));
    Check check =
        only(
            "wall slenderness",
            MemberChecks.of(
                BAR, cantilever(new Stock(tube, S355), Wrench.moment(0, 0, 500)), NONE));
    assertEquals(d / t, ((Measured) check.verdict()).demand(), 1e-9);
    assertEquals(90 * 235.0 / 355, ((Measured) check.verdict()).capacity(), 1e-9);
  }

  @Test
  void beams_out_of_order_are_refused() {
    refused(
        "part rail: beam second ends at c, but beam first starts at a; name the beams in order",
        new Member("rail", List.of("second", "first"), ONE_METRE, List.of()));
  }

  @Test
  void beams_of_two_stocks_are_refused_as_one_part() {
    refused(
        "part rail: beams first and third are not of one stock; make a part of each",
        new Member("rail", List.of("first", "third"), ONE_METRE, List.of()));
  }

  @Test
  void a_weld_beyond_the_end_is_refused() {
    refused(
        "part rail: weld tab sits 1200 mm from its start; the part is 1000 mm long",
        new Member("rail", List.of("first", "second"), ONE_METRE, List.of(new Weld("tab", 1.2))));
  }

  @Test
  void a_run_of_beams_is_checked_at_its_worst_cut() {
    Member rail = new Member("rail", List.of("first", "second"), ONE_METRE, List.of());
    Check check = only("combined stress", MemberChecks.of(rail, twoBeams(), NONE));
    assertEquals(1000 / P.wely(), demand(check.verdict()), 0.01 * demand(check.verdict()));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void no_cut_of_a_fine_grid_is_stressed_more_than_the_check_says(long seed) {
    Random random = new Random(seed);
    Response response =
        cantilever(
            STOCK,
            new Load.AtNode(
                "tip",
                new Wrench(
                    1e4 * random.nextGaussian(),
                    500 * random.nextGaussian(),
                    500 * random.nextGaussian(),
                    300 * random.nextGaussian(),
                    500 * random.nextGaussian(),
                    300 * random.nextGaussian())),
            new Load.AlongBeam(
                "bar", 0, 1000 * random.nextGaussian(), 1000 * random.nextGaussian()));
    double said = demand(only("combined stress", MemberChecks.of(BAR, response, NONE)).verdict());
    for (int i = 0; i <= 500; i++) {
      InternalForces f = response.forces("bar").at(i / 500.0);
      for (StressPoint at : TUBE.points()) {
        double sigma = f.n() / P.area() + f.my() * at.z() / P.iy() - f.mz() * at.y() / P.iz();
        double tau = f.vy() * at.perVy() + f.vz() * at.perVz() + f.t() * at.perT();
        assertTrue(Math.sqrt(sigma * sigma + 3 * tau * tau) <= 1.005 * said, "seed " + seed);
      }
    }
  }

  @Test
  void what_is_never_checked_is_listed() {
    assertTrue(MemberChecks.notMade().contains("welds of rail-to-crossmember joints"));
    assertTrue(MemberChecks.notMade().contains("fatigue"));
  }

  private static void refused(String message, Member member) {
    refused(message, member, twoBeams());
  }

  private static void refused(String message, Member member, Response response) {
    assertEquals(
        message,
        assertThrows(ModelException.class, () -> MemberChecks.of(member, response, NONE))
            .getMessage());
  }

  private static Response twoBeams() {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("a", new Point(0, 0, 0))
            .node("b", new Point(0.5, 0, 0))
            .node("c", new Point(1, 0, 0))
            .node("d", new Point(0.5, 1, 0))
            .beam(Beam.rigid("first", "a", "b", STOCK))
            .beam(Beam.rigid("second", "b", "c", STOCK))
            .beam(Beam.rigid("third", "b", "d", new Stock(TUBE.turned(), S355)))
            .support(Support.fixed("a"))
            .build();
    return Solver.of(frame)
        .solve(LoadCase.of("tip", new Load.AtNode("c", Wrench.force(0, 0, -1000))));
  }

  private static Check stress(Stock stock, Wrench load, DesignFactor factor) {
    return only("combined stress", MemberChecks.of(BAR, cantilever(stock, load), factor));
  }

  private static boolean has(String what, List<Check> checks) {
    return checks.stream().anyMatch(check -> check.what().equals(what));
  }

  private static double demand(Verdict verdict) {
    return verdict.numbers().orElseThrow().demand();
  }

  @Test
  void the_sway_of_a_frame_is_never_counted_in_lengths_and_in_moments() {
    Frame frame = Examples.cantilever(STOCK, new Wrench(-1000, 0, 100, 0, 0, 0)).frame();
    Response second =
        Solver.secondOrder(frame)
            .solve(LoadCase.of("push", new Load.AtNode("tip", new Wrench(-1000, 0, 100, 0, 0, 0))));
    BucklingLengths swaying =
        new BucklingLengths(2, 2, 1, "twice the length (K = 2)", Member.Sway.IN_LENGTHS);
    refused(
        "part bar: its effective lengths have the frame's sway inside (twice the length (K = 2)),"
            + " and so have the moments of load case push, solved in second order; never both: give"
            + " lengths between held ends (K at most 1), or moments of first order",
        BAR.with(swaying),
        second);
    assertFalse(MemberChecks.of(BAR, second, NONE).isEmpty());
  }
}

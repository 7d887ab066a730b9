package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.vehicle.Balance;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

class CollapseFiguresTest {
  private static final RatedMaterial STEEL = Runabout.steel(235);
  private static final Ladder LADDER = Runabout.cranked(STEEL);
  private static final Collapse POST = Collapse.of(Runabout.vehicle(), LADDER, Event.Hit.CENTRE);

  private static Range over(Kind kind, ToDoubleFunction<Collapse.Path> figure) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Collapse.Path path : POST.paths()) {
      low = Math.min(low, figure.applyAsDouble(path));
      high = Math.max(high, figure.applyAsDouble(path));
    }
    return new Range(kind, low, high);
  }

  @Test
  void its_figures_span_all_runs() {
    assertEquals(
        over(Kind.ACCELERATION, p -> p.first().reached().deceleration()), POST.firstHinge());
    assertEquals(
        over(Kind.ACCELERATION, p -> p.last().reached().deceleration()), POST.deceleration());
    assertEquals(over(Kind.FORCE, p -> p.last().reached().force()), POST.force());
    assertEquals(over(Kind.LENGTH, Collapse.Path::crush), POST.crush());
    assertEquals(over(Kind.ENERGY, p -> p.energy(0.07)), POST.energy(mm(70)));
    Refused.with("crush 0 mm is not above zero", () -> POST.energy(mm(0)));
  }

  @Test
  void runs_go_through_strengths_then_joints_then_bounds() {
    List<String> words = POST.paths().stream().map(path -> path.of().words()).toList();
    assertEquals(
        List.of(
            "low strength, joints rigid",
            "low strength, joints rigid; masses on their foremost mounts",
            "low strength, joints rigid; masses on their rearmost mounts"),
        words.subList(0, 3));
    int half = words.size() / 2;
    assertEquals("high strength, joints rigid", words.get(half));
    assertEquals(3 * LADDER.joints().size(), half);
    assertEquals(POST.paths().get(0), POST.rigid(CrushTube.Strength.LOW));
    assertEquals(POST.paths().get(half), POST.rigid(CrushTube.Strength.HIGH));
  }

  /** Hinged at its ends the crossmember is weakest; which end twists free makes no difference. */
  @Test
  void of_several_weakest_runs_the_one_made_first_decides() {
    assertEquals(
        "low strength, front crossmember's joints released, torsion at the right",
        POST.deciding(CrushTube.Strength.LOW).of().words());
    double most =
        POST.paths().stream()
            .mapToDouble(path -> path.last().reached().force())
            .max()
            .orElseThrow();
    Collapse.Path first =
        POST.paths().stream()
            .filter(path -> path.of().strength() == CrushTube.Strength.HIGH)
            .filter(path -> path.last().reached().force() > most * (1 - 1e-6))
            .findFirst()
            .orElseThrow();
    assertEquals(first, POST.deciding(CrushTube.Strength.HIGH));
  }

  @Test
  void rails_are_the_curves_of_the_deciding_runs() {
    RigidOrCrush.Rails rails = POST.rails(mm(400));
    assertEquals(
        "frame, " + POST.deciding(CrushTube.Strength.LOW).of().words(), rails.low().name());
    assertEquals(
        "frame, " + POST.deciding(CrushTube.Strength.HIGH).of().words(), rails.high().name());
    assertEquals(0.4, rails.high().last().crush(), 1e-12);
  }

  @Test
  void it_keeps_what_it_was_made_of() {
    assertEquals(LADDER, POST.ladder());
    assertEquals("Runabout", POST.vehicle().name());
    assertEquals(Event.Hit.CENTRE, POST.hit());
    Balance balance =
        Balance.of(
            Event.frontalImpact(g(1), Event.Hit.CENTRE), Runabout.vehicle().on(LADDER), LADDER);
    assertEquals(balance.atSeats(), POST.seatsAtOneG());
    assertEquals(CollapseAssumptions.USUAL.words(), POST.assumptions());
    assertEquals(CollapseAssumptions.USUAL.leftOut(), POST.leftOut());
    assertEquals(new RailTips(LADDER).words(Units.METRIC), POST.tips(Units.METRIC));
    CrushTube tip = POST.tip(Side.RIGHT).orElseThrow();
    assertEquals("right rail tip", tip.name());
    assertEquals(0.3, tip.length(), 1e-12);
    String words = POST.toString();
    assertTrue(
        words.startsWith(
            "Collapse of Runabout, centre: first hinge at "
                + POST.firstHinge()
                + ", mechanism at "
                + POST.deceleration()
                + " ("
                + POST.force()
                + "), crushed by "
                + POST.crush()
                + "\n"),
        words);
  }

  /** A leg of 200 mm that rises by 100: head free to turn at low strength, held at the high one. */
  @Test
  void a_kick_up_falls_from_one_hinge_or_from_two() {
    Collapse.KickUpFall fall = POST.kickUps().get(0);
    assertEquals("front", fall.kickUp().name());
    assertEquals(Section.squareTube(mm(50), mm(3)).name(), fall.section());
    FoldingHinge folding =
        FoldingHinge.of(Section.squareTube(mm(50), mm(3)), 0.9 * 235e6, STEEL.elasticity())
            .orElseThrow();
    assertEquals(
        new CrankedRail(
                0.2,
                0.1,
                1,
                TwoStrengths.usual()
                    .surface(Section.squareTube(mm(50), mm(3)), STEEL, CrushTube.Strength.LOW),
                Optional.of(folding))
            .force(fall.low().get(10).turn()),
        fall.low().get(10).force(),
        1e-6 * fall.low().get(10).force());
    assertEquals(
        new CrankedRail(
                0.2,
                0.1,
                2,
                TwoStrengths.usual()
                    .surface(Section.squareTube(mm(50), mm(3)), STEEL, CrushTube.Strength.HIGH),
                Optional.empty())
            .force(fall.high().get(10).turn()),
        fall.high().get(10).force(),
        1e-6 * fall.high().get(10).force());
    assertEquals(
        new Range(Kind.FORCE, fall.low().get(0).force(), fall.high().get(0).force()),
        fall.beginning());
    double slow =
        POST.strainRate(0).kickUps().get(0).high().get(0).force() / fall.high().get(0).force();
    assertEquals(1 / (1 + Math.pow(1 / 40.4, 0.2)), slow, 1e-6, "the rate of yield, once");
  }

  /**
   * Reach 200, rise 100: after 0.3 rad 200 (1 − cos) + 100 sin shorter, lever 100 cos + 200 sin.
   */
  @Test
  void a_leg_that_turns_gets_shorter_and_its_lever_longer() {
    CrankedRail rail =
        new CrankedRail(
            0.2,
            0.1,
            1,
            TwoStrengths.usual()
                .surface(Section.squareTube(mm(50), mm(3)), STEEL, CrushTube.Strength.LOW),
            Optional.empty());
    assertEquals(0.2 * (1 - Math.cos(0.3)) + 0.1 * Math.sin(0.3), rail.crush(0.3), 1e-12);
    assertEquals(0.1 * Math.cos(0.3) + 0.2 * Math.sin(0.3), rail.lever(0.3), 1e-12);
    List<Collapse.Fallen> branch = rail.branch();
    assertEquals(41, branch.size());
    assertEquals(0, branch.get(0).energy());
    Collapse.Fallen one = branch.get(1);
    assertEquals(one.crush() * (branch.get(0).force() + one.force()) / 2, one.energy(), 1e-9);
    Collapse.Fallen two = branch.get(2);
    assertEquals(
        one.energy() + (two.crush() - one.crush()) * (one.force() + two.force()) / 2,
        two.energy(),
        1e-9);
  }
}

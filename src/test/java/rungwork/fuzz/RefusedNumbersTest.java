package rungwork.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwork.quantity.Quantities.kg;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import rungwork.check.Verdict;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;
import rungwork.frame.End;
import rungwork.frame.Release;
import rungwork.frame.Wrench;
import rungwork.impact.CrashModel;
import rungwork.impact.CrushElement;
import rungwork.impact.Range;
import rungwork.joint.Bolt;
import rungwork.quantity.Kind;
import rungwork.record.Distortion;
import rungwork.record.Reading;
import rungwork.section.Outline;
import rungwork.section.Spot;
import rungwork.study.Scatter;
import rungwork.study.Spread;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Side;

/** What the random calls found, each with the full text of its refusal. */
class RefusedNumbersTest {
  private static void refused(String message, Executable call) {
    assertEquals(message, assertThrows(ModelException.class, call).getMessage());
  }

  @Test
  void numbers_that_overflow_or_vanish_on_the_way_are_refused() {
    refused(
        "x is 1.000e300 in SI units; numbers beyond 1e30 cannot be calculated with",
        () -> Guard.finite("x", 1e300));
    refused(
        "wall 1.000e-297 mm is too small to be calculated with; 1e-30 in SI units is the least",
        () -> Guard.positive("wall", 1e-300, Scale.MM));
  }

  @Test
  void a_result_that_is_no_number_is_a_failure_of_the_numbers() {
    assertEquals(
        "a force comes out as not a number; the numbers put in lie too far apart to be calculated"
            + " with",
        assertThrows(SolveException.class, () -> Guard.solved("a force", Double.NaN)).getMessage());
  }

  @Test
  void digits_and_units_of_no_size_are_refused() {
    refused("0 digits cannot be shown; ask for 1 to 17", () -> Scale.MM.show(1, 0));
    refused(
        "the size of a unit \"mm\" is 0; give a finite number above zero",
        () -> new Scale("mm", 0));
  }

  @Test
  void vectors_that_are_not_finite_are_refused() {
    refused("force fz is not a number; give a finite number", () -> Wrench.force(0, 0, Double.NaN));
    refused("z is infinite; give a finite number", () -> new Spot(0, Double.POSITIVE_INFINITY));
  }

  @Test
  void an_end_may_be_told_twice_what_it_lets_go() {
    assertEquals(
        Set.of(Release.TORSION), End.released(Release.TORSION, Release.TORSION).released());
    assertEquals(
        Joints.torsionReleased(List.of("front"), Side.LEFT),
        Joints.torsionReleased(List.of("front", "front"), Side.LEFT));
  }

  @Test
  void a_reason_has_one_place_for_each_number() {
    refused(
        "the reason \"wall {}\" has 1 places {} for 0 numbers", () -> Verdict.Reason.of("wall {}"));
  }

  @Test
  void a_part_of_a_spread_lies_inside_it() {
    refused(
        "the part 1.000 of a spread does not lie between 0 and 1",
        () -> new Spread.Even(1, 2).quantile(1));
  }

  @Test
  void nothing_has_no_range_and_no_edge() {
    refused(
        "no figures of a force to span; give one at least",
        () -> Range.spanning(Kind.FORCE, DoubleStream.empty()));
    refused("an outline without lines has no edge", () -> new Outline(List.of()).furthest(Spot::z));
  }

  @Test
  void studies_larger_than_memory_and_shares_of_nothing_are_refused() {
    refused(
        "a scatter of 5,000,001 settings does not fit the memory; 5,000,000 are the most",
        () -> Scatter.Sampling.random(5_000_001, 1));
    refused("1 of 0 settings is no share", () -> new Scatter.Share(1, 0, 0, 1));
    refused(
        "a curve along deceleration needs no more than 10000 steps, not 10001",
        () -> Recipes.study().family("deceleration", 10_001));
    refused(
        "lower end of a spread is -infinite; give a finite number",
        () -> new Spread.Even(Double.NEGATIVE_INFINITY, 0));
  }

  @Test
  void what_was_read_and_what_it_means_are_numbers() {
    OptionalDouble read = OptionalDouble.of(Double.NaN);
    refused(
        "reading from front to rear is not a number; give a finite number",
        () -> new Reading(Reading.Kind.LENGTH, Side.LEFT, "front", "rear", 1, read));
    refused(
        "size of the sag is not a number; give a finite number",
        () -> new Distortion(Distortion.Form.SAG, "", List.of(), Double.NaN, 0, List.of()));
    refused(
        "mass of tube is not a number; give a finite number",
        () -> new CrushElement.Tested("tube", 0.08, Double.NaN));
  }

  @Test
  void bolts_and_motors_of_no_size_are_refused() {
    refused("fine hole 0 mm is not above zero", () -> new Bolt.Holes(0, 1, 2));
    refused("tensile strength of a bolt 0 MPa is not above zero", () -> new Bolt.Minimum(0, 1, 1));
    refused("a motor has no name; give it one", () -> CrashModel.Motor.of(" ", kg(50)));
  }
}

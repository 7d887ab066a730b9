package rungwork.validation;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Mass;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.material.Elasticity;
import rungwork.material.Source;
import rungwork.material.UnratedMaterial;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.solve.Vibration;

/** Natural frequencies of uniform beams against printed tables, and of a few small systems. */
class VibrationValidationTest {
  private static final String THOMSON =
      "Thomson, Theory of Vibration with Applications, appendix D and table 9.5-1: (βL)²";

  /** EIz = 1, EIy = 4, EA and GJ large, ρA = 1, L = 1. */
  private static final Stock BAR = bar(1e4, 4, 1, 1e4);

  /** Many short beams, so that what cutting leaves is below the printed digits. */
  private static final int BEAMS = 24;

  private static Stock bar(double area, double iy, double iz, double it) {
    Properties properties =
        new Properties(area, iy, iz, 0, it, 0, 0, 1, 1, 1, 1, 1, area, area, 0, 0);
    Section section = new Section("by stiffness", properties, List.of(), List.of());
    Elasticity unit = new Elasticity(1, 0.25, 1 / area);
    return new Stock(
        section, new UnratedMaterial("unit", unit, new Source("a bar", Source.Tag.STATED_BY_USER)));
  }

  private static Frame.Builder beam(Stock stock, int beams) {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i <= beams; i++) {
      frame.node("N" + i, new Point((double) i / beams, 0, 0));
    }
    for (int i = 0; i < beams; i++) {
      frame.beam(Beam.rigid("b" + i, "N" + i, "N" + (i + 1), stock));
    }
    return frame;
  }

  private static Support pinned(String node) {
    return Support.holding(node, Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX);
  }

  private static String last(int beams) {
    return "N" + beams;
  }

  /** Circular frequencies of bending in the plane: those of out of it are twice as high. */
  private static double[] inPlane(Frame frame, int count) {
    return Vibration.of(frame, List.of()).modes(4 * count).stream()
        .filter(mode -> mode.motion().contains("along y"))
        .limit(count)
        .mapToDouble(mode -> 2 * Math.PI * mode.frequency())
        .toArray();
  }

  private static void table(String ends, Frame.Builder frame, String... printed) {
    double[] omega = inPlane(frame.build(), printed.length);
    Published row = Published.read(THOMSON, ends);
    for (int i = 0; i < printed.length; i++) {
      row.value("mode " + (i + 1), "", printed[i], omega[i]);
    }
  }

  @Test
  void uniform_beams_on_the_usual_supports() {
    String end = last(BEAMS);
    table(
        "clamped and free",
        beam(BAR, BEAMS).support(Support.fixed("N0")),
        "3.5160",
        "22.0345",
        "61.6972");
    table(
        "clamped at both ends",
        beam(BAR, BEAMS).support(Support.fixed("N0")).support(Support.fixed(end)),
        "22.3733",
        "61.6728",
        "120.9034");
    table("free at both ends", beam(BAR, BEAMS), "22.4", "61.7");
    table(
        "simply supported",
        beam(BAR, BEAMS).support(pinned("N0")).support(pinned(end)),
        "9.87",
        "39.5");
    table(
        "clamped and hinged",
        beam(BAR, BEAMS).support(Support.fixed("N0")).support(pinned(end)),
        "15.4",
        "50.0");
  }

  /** cos βL cosh βL + 1 = μ βL (sin βL cosh βL − cos βL sinh βL) for a tip mass of μ times ρAL. */
  @Test
  void a_clamped_beam_with_a_mass_at_its_tip() {
    double mu = 2;
    double root =
        new BrentSolver(1e-14)
            .solve(
                100,
                b ->
                    Math.cos(b) * Math.cosh(b)
                        + 1
                        - mu * b * (Math.sin(b) * Math.cosh(b) - Math.cos(b) * Math.sinh(b)),
                0.5,
                1.8);
    Frame frame = beam(BAR, 4).support(Support.fixed("N0")).build();
    Mass tip = Mass.point("tip", mu, new Point(1, 0, 0), List.of("N4"));
    double omega = 2 * Math.PI * Vibration.of(frame, List.of(tip)).modes(1).get(0).frequency();
    Published.derived("frequency equation of the uniform beam", "clamped, tip mass 2ρAL")
        .value("(βL)²", "", "%.6f".formatted(root * root), omega);
  }

  /** A hinge made by a release, not by a support, gives the same beam. */
  @Test
  void a_clamped_beam_whose_end_turns_freely_in_its_joint() {
    Frame.Builder frame = beam(BAR, BEAMS - 1);
    End hinge = End.released(Release.IN_PLANE_BENDING);
    frame
        .node("wall", new Point((double) BEAMS / (BEAMS - 1), 0, 0))
        .beam(Beam.rigid("last", last(BEAMS - 1), "wall", BAR).joined(End.RIGID, hinge))
        .support(Support.fixed("N0"))
        .support(Support.fixed("wall"));
    double stretched = (double) BEAMS / (BEAMS - 1);
    double omega = inPlane(frame.build(), 2)[1] * stretched * stretched;
    Published.read(THOMSON, "clamped and hinged, by a release").value("mode 2", "", "50.0", omega);
  }
}

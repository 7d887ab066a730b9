package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Mass;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Elasticity;
import rungwork.material.UnratedMaterial;
import rungwork.section.Properties;

class VibrationTest {
  private static final double LENGTH = 1.2;
  private static final double ABOVE = 0.3;

  /** What sixteen beams leave of the third wave's shear strain; twice as many leave a quarter. */
  private static final double CUT = 5e-5;

  private static double omega(Frame frame, int mode) {
    return 2 * Math.PI * Vibration.of(frame, List.of()).modes(mode + 1).get(mode).frequency();
  }

  private static Frame chain(Stock stock, Beam.Bending bending, int beams, Freedom... others) {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i <= beams; i++) {
      frame.node("N" + i, new Point(LENGTH * i / beams, 0, 0));
    }
    for (int i = 0; i < beams; i++) {
      frame.beam(Beam.rigid("b" + i, "N" + i, "N" + (i + 1), stock).bending(bending));
    }
    frame.support(Support.holding("N0", Freedom.UX, others));
    return frame.support(Support.holding("N" + beams, Freedom.UX, others)).build();
  }

  /** Turning cross-sections and shear strain: m ω² and ρI ω² against GA and EI (sine waves). */
  @Test
  void a_simply_supported_beam_with_shear_strain_has_Timoshenkos_frequencies() {
    Frame frame =
        chain(
            Stocks.TUBE,
            Beam.Bending.WITH_SHEAR_STRAIN,
            16,
            Freedom.UY,
            Freedom.UZ,
            Freedom.RX,
            Freedom.RY);
    Properties tube = Stocks.TUBE.section().properties();
    double ei = 210e9 * tube.iz();
    double ga = 80.77e9 * tube.shearY();
    for (int n = 1; n <= 3; n++) {
      double k = n * Math.PI / LENGTH;
      double m = 7850 * tube.area();
      double r = 7850 * tube.iz();
      double b = m * (ga + ei * k * k) + r * ga * k * k;
      double c = ga * k * k * ei * k * k;
      double slow = (b - Math.sqrt(b * b - 4 * m * r * c)) / (2 * m * r);
      assertEquals(1, omega(frame, 2 * (n - 1)) / Math.sqrt(slow), CUT, "half waves: " + n);
    }
  }

  /** Sine waves on forked ends: bending about the shear centre, mass about the centroid. */
  @Test
  void a_channel_bends_and_twists_at_once() {
    Stocks.Shape shape = new Stocks.Shape(400e-6, 80e-9, 400e-9, 1.2e-9);
    double e = 0.024;
    Stock channel = new Stocks(210e9, 80.77e9).eccentric(shape, e);
    Frame frame =
        chain(
            channel,
            Beam.Bending.WITHOUT_SHEAR_STRAIN,
            16,
            Freedom.UY,
            Freedom.UZ,
            Freedom.RX,
            Freedom.RZ);
    double k = Math.PI / LENGTH;
    double m = 7850 * 400e-6;
    double polar = m * e * e + 7850 * (80e-9 + 400e-9);
    double bend = 210e9 * 80e-9 * Math.pow(k, 4);
    double twist = 80.77e9 * 1.2e-9 * k * k;
    double a = m * polar - m * e * m * e;
    double b = bend * polar + twist * m;
    double slow = (b - Math.sqrt(b * b - 4 * a * bend * twist)) / (2 * a);
    assertEquals(1, omega(frame, 0) / Math.sqrt(slow), 1e-4);
  }

  private static Stock light(Stock stock) {
    Elasticity e = stock.material().elasticity();
    Elasticity none = new Elasticity(e.youngsModulus(), e.poissonsRatio(), 1e-6);
    return new Stock(
        stock.section(), new UnratedMaterial("light", none, stock.material().source()));
  }

  private static List<Mass> heavy() {
    List<Mass> masses = new ArrayList<>();
    for (int i = 0; i <= 3; i++) {
      for (String side : List.of("R", "L")) {
        Point at =
            new Point(
                0.3 - Ladders.BAY * i,
                (side.equals("R") ? -1 : 1) * Ladders.WIDTH / 2,
                0.25 + ABOVE * (i % 2));
        double m = 10 + 7 * i + (side.equals("R") ? 3 : 0);
        masses.add(
            new Mass(side + i, m, at, Mass.Inertia.box(m, 0.3, 0.2, 0.1), List.of(side + i), 1));
      }
    }
    return masses;
  }

  /** The inertia of a vibration, put on the frame as a load that stays, brings its shape back. */
  @Test
  void a_floating_ladder_with_masses_above_it_answers_its_own_inertia() {
    Frame ladder = Ladders.of(light(Stocks.TUBE), light(Stocks.TUBE)).build();
    Solver solver = Solver.unsupported(ladder);
    for (Vibration.Mode mode : Vibration.of(ladder, heavy()).modes(8)) {
      double squared = Math.pow(2 * Math.PI * mode.frequency(), 2);
      Load[] inertia =
          heavy().stream().map(mass -> inertia(mass, mode, squared)).toArray(Load[]::new);
      Response response = solver.solve(LoadCase.of("inertia", inertia));
      for (ToDoubleFunction<ToDoubleFunction<String>> bent : BENT) {
        assertEquals(
            bent.applyAsDouble(node -> mode.shape(node).uz()),
            bent.applyAsDouble(node -> response.displacement(node).uz()),
            1e-6,
            mode.toString());
        assertEquals(
            bent.applyAsDouble(node -> mode.shape(node).uy()),
            bent.applyAsDouble(node -> response.displacement(node).uy()),
            1e-6,
            mode.toString());
      }
    }
  }

  /** What no rigid motion changes: how far a rail bends, and how far the ladder twists. */
  private static final List<ToDoubleFunction<ToDoubleFunction<String>>> BENT =
      List.of(
          u -> u.applyAsDouble("R0") - 2 * u.applyAsDouble("R1") + u.applyAsDouble("R2"),
          u -> u.applyAsDouble("L1") - 2 * u.applyAsDouble("L2") + u.applyAsDouble("L3"),
          u ->
              u.applyAsDouble("R0")
                  - u.applyAsDouble("L0")
                  - u.applyAsDouble("R3")
                  + u.applyAsDouble("L3"));

  private static Load inertia(Mass mass, Vibration.Mode mode, double squared) {
    Displacement u = mode.shape(mass.name());
    double up = mass.at().z() - 0.25;
    double fx = squared * mass.kilograms() * (u.ux() + u.ry() * up);
    double fy = squared * mass.kilograms() * (u.uy() - u.rx() * up);
    Mass.Inertia own = mass.own();
    return new Load.AtNode(
        mass.name(),
        new Wrench(
            fx,
            fy,
            squared * mass.kilograms() * u.uz(),
            squared * own.xx() * u.rx() - up * fy,
            squared * own.yy() * u.ry() + up * fx,
            squared * own.zz() * u.rz()));
  }

  @Test
  void a_mass_on_several_nodes_moves_as_they_take_it_along() {
    Frame ladder = Ladders.of(light(Stocks.TUBE), light(Stocks.TUBE)).build();
    List<Mass> four =
        List.of(
            Mass.point(
                "front",
                80,
                new Point(0.3 - Ladders.BAY / 2, 0, 0.25),
                List.of("R0", "L0", "R1", "L1")),
            Mass.point(
                "rear",
                80,
                new Point(0.3 - 2.5 * Ladders.BAY, 0, 0.25),
                List.of("R2", "L2", "R3", "L3")));
    List<Mass> apart = new ArrayList<>();
    for (Mass mass : four) {
      mass.carriers()
          .forEach(node -> apart.add(Mass.point(node, 20, ladder.node(node).at(), List.of(node))));
    }
    double together = Vibration.of(ladder, four).modes(1).get(0).frequency();
    double alone = Vibration.of(ladder, apart).modes(1).get(0).frequency();
    assertTrue(together > alone, together + " against " + alone);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void cutting_a_beam_in_two_changes_little_and_only_downwards(long seed) {
    Frame frame = new RandomFrames(seed).frame();
    Frame cut = new Cutting(frame, 2).frame();
    List<Vibration.Mode> few = Vibration.of(frame, List.of()).modes(3);
    List<Vibration.Mode> more = Vibration.of(cut, List.of()).modes(3);
    for (int i = 0; i < 3; i++) {
      double ratio = few.get(i).frequency() / more.get(i).frequency();
      assertTrue(ratio > 1 - 1e-9 && ratio < 1.01, "seed " + seed + ": " + ratio);
    }
  }

  @Test
  void a_ladder_on_springs_first_moves_as_a_body() {
    Frame.Builder frame = Ladders.of(Stocks.TUBE, Stocks.TUBE);
    List<String> corners = List.of("R0", "L0", "R3", "L3");
    for (String corner : corners) {
      frame.support(Support.holding(corner, Freedom.UX, Freedom.UY));
      frame.support(Support.spring(corner, Freedom.UZ, 50));
    }
    Frame ladder = frame.build();
    double mass = InertiaBalance.ownMasses(ladder).stream().mapToDouble(Mass::kilograms).sum();
    double heave = Math.sqrt(4 * 50 / mass) / (2 * Math.PI);
    double nearest =
        Vibration.of(ladder, List.of()).modes(3).stream()
            .mapToDouble(mode -> Math.abs(mode.frequency() / heave - 1))
            .min()
            .orElseThrow();
    assertEquals(0, nearest, 2e-3);
  }

  @Test
  void frequencies_come_in_order_and_none_twice() {
    Frame ladder = Ladders.of(Stocks.TUBE, Stocks.TUBE).build();
    List<Vibration.Mode> modes = Vibration.of(ladder, heavy()).modes(12);
    IntStream.range(1, 12)
        .forEach(i -> assertTrue(modes.get(i).frequency() >= modes.get(i - 1).frequency() - 1e-9));
    assertEquals(
        modes.get(2).frequency(), Vibration.of(ladder, heavy()).modes(3).get(2).frequency(), 1e-8);
  }

  @Test
  void a_mechanism_is_named() {
    Frame frame =
        Frame.in(Plane.PLAN)
            .node("A", new Point(0, 0, 0))
            .node("B", new Point(1, 0, 0))
            .beam(Beam.rigid("bar", "A", "B", Stocks.TUBE))
            .support(
                Support.holding("A", Freedom.UX, Freedom.UY, Freedom.UZ, Freedom.RX, Freedom.RY))
            .build();
    SolveException refused =
        assertThrows(SolveException.class, () -> Vibration.of(frame, List.of()));
    assertEquals(
        "nothing resists node A turning about z (in the frame's plane): hold it by a support, or"
            + " join a beam to it there",
        refused.getMessage());
  }

  @Test
  void more_vibrations_than_there_are_motions_are_refused() {
    Vibration one =
        Vibration.of(
            Frame.in(Plane.PLAN)
                .node("A", new Point(0, 0, 0))
                .node("B", new Point(1, 0, 0))
                .beam(Beam.rigid("bar", "A", "B", Stocks.TUBE))
                .build(),
            List.of());
    assertEquals("Vibration of a frame of 1 beams, floating", one.toString());
    assertEquals(
        "25 vibrations are asked for; this frame gives from 1 to 24",
        assertThrows(ModelException.class, () -> one.modes(25)).getMessage());
    assertEquals(
        "0 vibrations are asked for; this frame gives from 1 to 24",
        assertThrows(ModelException.class, () -> one.modes(0)).getMessage());
    assertEquals(24, one.modes(24).size());
  }

  @Test
  void a_mode_says_its_frequency_and_what_moves_most() {
    Frame frame = chain(Stocks.TUBE, Beam.Bending.WITHOUT_SHEAR_STRAIN, 1, Freedom.values());
    Vibration.Mode first = Vibration.of(frame, List.of()).modes(1).get(0);
    assertEquals("196.9 Hz, the middle of beam b0 moving along y most", first.toString());
    Displacement middle = first.middle("b0");
    assertEquals(1, Math.max(Math.abs(middle.uy()), Math.abs(middle.uz())), 1e-9);
  }
}

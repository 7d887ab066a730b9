package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.frame.Support;
import rungwork.frame.Wrench;
import rungwork.material.Material;
import rungwork.section.Section;

/** A ladder of a hundred thousand nodes, solved in a Java of its own with a heap of 1 GiB. */
class LargeFrameTest {
  private static final int NODES = 100_000;
  private static final double BAY = 0.7;

  /** Bays between one pair of supports and the next. */
  private static final int SPAN = 20;

  @Test
  void a_ladder_of_a_hundred_thousand_nodes_is_solved_within_a_heap_of_one_gigabyte(
      @TempDir Path folder) throws Exception {
    Path output = folder.resolve("said.txt");
    Process java =
        new ProcessBuilder(
                System.getProperty("java.home") + "/bin/java",
                "-Xmx1g",
                "-cp",
                System.getProperty("java.class.path"),
                LargeFrameTest.class.getName())
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    assertTrue(java.waitFor(5, TimeUnit.MINUTES), "it has not come to an end");
    String said = Files.readString(output);
    assertEquals(0, java.exitValue(), said);
  }

  /**
   * Solves the large ladder; every span but the loaded one stands still, so the loaded one answers
   * as a short ladder does.
   */
  public static void main(String[] none) {
    double far = tipOf(NODES / 2 - 1);
    double near = tipOf(2 * SPAN);
    if (!(Math.abs(far - near) <= 1e-9 * Math.abs(near))) {
      throw new AssertionError(far + " m in the long ladder, " + near + " m in the short one");
    }
  }

  private static double tipOf(int bays) {
    Response response =
        Solver.of(ladder(bays))
            .solve(LoadCase.of("P", new Load.AtNode("R7", Wrench.force(100, 1000, 3000))));
    return response.displacement("R7").uz();
  }

  private static Frame ladder(int bays) {
    Stock tube =
        new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Material.named("S355J2H"));
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i <= bays; i++) {
      frame.node("R" + i, new Point(-BAY * i, -0.31, 0));
      frame.node("L" + i, new Point(-BAY * i, 0.31, 0));
      frame.beam(Beam.rigid("cross " + i, "R" + i, "L" + i, tube));
      if (i % SPAN == 0) {
        frame.support(Support.fixed("R" + i)).support(Support.fixed("L" + i));
      }
    }
    for (int i = 0; i < bays; i++) {
      frame.beam(Beam.rigid("right " + i, "R" + i, "R" + (i + 1), tube));
      frame.beam(Beam.rigid("left " + i, "L" + i, "L" + (i + 1), tube));
    }
    return frame.build();
  }
}

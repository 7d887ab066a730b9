package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwork.kernel.Cell;
import rungwork.kernel.CellEnd;
import rungwork.kernel.CellOutput;
import rungwork.kernel.Evaluator;

/** What a cell says to mistakes that everybody makes: what is wrong, and what to do. */
class BeginnersMistakesTest {
  private static final String PARTS =
      """
      import rungwork.frame.*;
      import rungwork.material.*;
      import rungwork.section.*;
      import rungwork.vehicle.*;
      var steel = Material.rated("S355J2H");
      var tube = new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), steel);
      LadderBuilder parts() {
          return Ladder.named("mine").level(mm(360)).rails(mm(200), mm(-1800), mm(700), tube)
              .crossmember("front", mm(200), tube).crossmember("rear", mm(-1800), tube);
      }
      """;

  private static Evaluator evaluator;

  @BeforeAll
  static void start() {
    evaluator = new Evaluator(Composition.setup(value -> {}));
    Rungwork.begin(evaluator, Path.of("target"));
    List<CellOutput> outputs = new ArrayList<>();
    assertEquals(CellEnd.FINISHED, run(PARTS, outputs), outputs::toString);
  }

  @AfterAll
  static void stop() {
    evaluator.close();
  }

  private static CellEnd run(String source, List<CellOutput> outputs) {
    return evaluator.run(new Cell(1, source), Duration.ofMinutes(1), outputs::add);
  }

  private static String told(String source) {
    List<CellOutput> outputs = new ArrayList<>();
    assertEquals(CellEnd.FAILED, run(source, outputs), outputs::toString);
    return ((CellOutput.Failure) outputs.get(outputs.size() - 1)).message();
  }

  @Test
  void a_number_without_a_unit() {
    String told = told("Section.rectangularTube(80, 40, 3)");
    assertTrue(
        told.endsWith(
            "; write the length with its unit, such as mm(50), inch(2) or length(\"3/16 in\")"),
        told);
    assertTrue(
        told("Event.braking(1.1)")
            .endsWith("; write the acceleration with its unit, such as g(1.1) or mps2(10)"));
  }

  @Test
  void a_stress_where_a_length_belongs() {
    String told = told("Section.rectangularTube(mm(80), mm(40), MPa(3))");
    assertTrue(told.contains("Pressure> cannot be converted to"), told);
    assertTrue(told.contains("; write the length with its unit"), told);
  }

  @Test
  void a_number_in_quotes() {
    assertTrue(told("mm(\"80\")").endsWith("; write the number without quotes"));
  }

  @Test
  void a_forgotten_semicolon_or_brace() {
    assertEquals(
        "';' expected; end the statement before it with a semicolon",
        told("var a = mm(5)\nvar b = 6;"));
    assertEquals(
        "reached end of file while parsing; close every bracket and brace that the cell opens",
        told("if (true) { mm(5);"));
  }

  @Test
  void a_forgotten_import() {
    assertEquals(
        "cannot find symbol; to use it, import rungwork.impact.CrashModel;",
        told("CrashModel.of(\"mine\", kmh(40), kg(700))"));
  }

  @Test
  void a_misspelt_name() {
    assertEquals("cannot find symbol; did you mean Ladder?", told("Laddr.named(\"mine\")"));
    assertEquals("cannot find symbol; did you mean build?", told("parts().buildd()"));
  }

  @Test
  void a_value_too_few() {
    assertTrue(
        told("Section.rectangularTube(mm(40), mm(3))")
            .endsWith("; what it takes is listed below, and by Shift+Tab inside its brackets"));
  }

  @Test
  void a_misspelt_table_or_a_size_that_is_not_sold() {
    assertTrue(
        told("SizeTable.of(\"square tube EN 10219\")")
            .startsWith(
                "there is no size table square tube EN 10219; did you mean square tube EN"
                    + " 10219-2?"));
    assertEquals(
        "square tube EN 10219-2 has no size 51x51x3; nearest are 50x50x3, 50x50x2.5, 60x60x3",
        told("SizeTable.of(\"square tube EN 10219-2\").at(\"51x51x3\")"));
  }

  @Test
  void a_misspelt_material() {
    assertTrue(
        told("Material.rated(\"S355JH2\")")
            .startsWith("unknown grade S355JH2; known are S235JRH, S275J2H, S355J2H, "));
  }

  @Test
  void a_wall_of_nothing_and_a_wall_that_leaves_no_bore() {
    assertEquals("tube wall 0 mm is not above zero", told("Section.squareTube(mm(50), mm(0))"));
    assertEquals(
        "wall 25.00 mm leaves no bore in a tube of 80.00 mm by 40.00 mm; the wall must stay below"
            + " 20.00 mm",
        told("Section.rectangularTube(mm(80), mm(40), mm(25))"));
  }

  @Test
  void a_negative_mass() {
    assertEquals(
        "mass battery -5.000 kg is not above zero",
        told(
            "Vehicle.named(\"mine\").mass(\"battery\", kg(-5), Point.at(mm(0), mm(0), mm(0)),"
                + " \"front left\")"));
  }

  @Test
  void an_unknown_crossmember() {
    assertEquals(
        "ladder mine has no crossmember named dash; it has front, rear",
        told("parts().build().withCrossmember(\"dash\", tube)"));
  }

  @Test
  void two_crossmembers_of_one_name() {
    assertEquals(
        "ladder mine has two features named front left; rename one",
        told("parts().crossmember(\"front\", mm(100), tube).build()"));
  }

  @Test
  void a_station_that_the_rails_do_not_reach() {
    assertEquals(
        "crossmember far sits at x -5000 mm, behind the rails, which run from 200.0 mm to -1800 mm",
        told("parts().crossmember(\"far\", mm(-5000), tube).build()"));
  }

  @Test
  void stations_from_rear_to_front() {
    assertEquals(
        "the rail runs from x -1800 mm to x 200.0 mm; give its points from front to rear",
        told("Ladder.named(\"turned\").level(mm(360)).rails(mm(-1800), mm(200), mm(700), tube)"));
  }

  @Test
  void a_ladder_without_a_height() {
    assertEquals(
        "ladder low has no level; give the height of the rails' centroid line",
        told("Ladder.named(\"low\").rails(mm(200), mm(-1800), mm(700), tube).build()"));
  }

  @Test
  void a_load_on_a_mount_that_is_not_there() {
    String told =
        told(
            """
            Vehicle.named("mine").wheelbase(mm(1500)).track(mm(1250), mm(1250)).frontRollShare(0.5)
                .wheel(Axle.FRONT, Side.LEFT, "front left").wheel(Axle.FRONT, Side.RIGHT, "front right")
                .wheel(Axle.REAR, Side.LEFT, "rear left").wheel(Axle.REAR, Side.RIGHT, "rear right")
                .mass("battery", kg(50), Point.at(mm(-500), mm(0), mm(400)), "frnt left").build()
                .on(parts().build())
            """);
    assertTrue(
        told.startsWith(
            "mass battery is carried by frnt left, which ladder mine does not have; it has front"
                + " left,"),
        told);
  }
}

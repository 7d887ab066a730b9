package rungwork.report;

import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.frame.Wrench;
import rungwork.impact.Crash;
import rungwork.impact.CrashModel;
import rungwork.impact.CrushCurve;
import rungwork.impact.CrushTube;
import rungwork.impact.Obstacle;
import rungwork.impact.Occupant;
import rungwork.impact.Pulse;
import rungwork.impact.Range;
import rungwork.impact.RigidOrCrush;
import rungwork.impact.Scene;
import rungwork.joint.Bolt;
import rungwork.joint.Factors;
import rungwork.joint.Parts;
import rungwork.joint.Pivot;
import rungwork.joint.PlateOnTube;
import rungwork.joint.PlateOnTube.Foot;
import rungwork.joint.Tab;
import rungwork.joint.TubeWall;
import rungwork.joint.WeldGroup;
import rungwork.joint.WeldGroup.Parent;
import rungwork.joint.WeldGroup.Run;
import rungwork.joint.WeldGroup.Seam;
import rungwork.loadpath.ChainSheet;
import rungwork.loadpath.Corner;
import rungwork.loadpath.Corners;
import rungwork.loadpath.Face;
import rungwork.loadpath.Face.Direction;
import rungwork.loadpath.MountChain;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.material.UnratedMaterial;
import rungwork.section.Section;
import rungwork.section.SizeTable;
import rungwork.study.Curlew;
import rungwork.study.Shortlist;

/** Hostile names of materials, sizes, joints and crashes, through the pages that they reach. */
class HostilePartsTest {
  @TempDir Path folder;

  static List<String> names() {
    return HostilePages.names();
  }

  private static RatedMaterial steel(String name) {
    return new RatedMaterial(
        name,
        Curlew.STEEL.elasticity(),
        new RatedMaterial.Strength(235e6, 360e6, 235e6, 0.2),
        new Source("said " + name, Source.Tag.STATED_BY_USER));
  }

  @ParameterizedTest
  @MethodSource("names")
  void of_materials_and_sections(String name) throws Exception {
    Section section = Section.squareTube(mm(50), mm(3)).named(name);
    HostilePages.assertText(steel(name));
    HostilePages.assertText(
        new UnratedMaterial(
            name, Curlew.STEEL.elasticity(), new Source(name, Source.Tag.FROM_MEMORY)));
    HostilePages.assertText(section);
    HostilePages.assertText(SectionCard.of(section, steel(name)));
    HostilePages.assertText(Lineup.of(section, section.turned()));
    HostilePages.assertText(Shortlist.of(List.of(section)));
  }

  /** What is no text is refused where the file is read. */
  static List<String> texts() {
    return names().stream()
        .filter(name -> StandardCharsets.UTF_8.newEncoder().canEncode(name))
        .filter(name -> name.indexOf(0) < 0)
        .toList();
  }

  /** A file's name and cells: quotes in a cell are doubled, as CSV has it. */
  @ParameterizedTest
  @MethodSource("texts")
  void of_a_file_of_sizes(String name) throws Exception {
    Path file = folder.resolve("rack & <b>.csv");
    Files.writeString(
        file,
        "size,shape,side_mm,wall_mm,source,tag\n\"%s\",square tube,50,3,\"%s\",memory\n"
            .formatted(name.replace("\"", "\"\""), name.replace("\"", "\"\"")));
    SizeTable rack = SizeTable.read(file);
    HostilePages.assertText(rack);
    HostilePages.assertText(rack.sizes().get(0));
    HostilePages.assertText(rack.sections().get(0));
  }

  private static ChainSheet mount(String name) {
    Tab tab = new Tab(name, steel(name), Parts.tab().plate(), Parts.tab().eye());
    Pivot bolt = new Pivot("b " + name, tab, Bolt.Threads.IN_PLANE, Pivot.Stack.of(mm(1), mm(20)));
    WeldGroup weld =
        new WeldGroup(
            "w " + name,
            Run.bothSides(mm(40), mm(5)),
            Seam.fillet(mm(5), MPa(490)),
            Parent.of(steel(name), mm(5)));
    PlateOnTube wall =
        PlateOnTube.of(
            "p " + name,
            TubeWall.of(steel(name), mm(80), mm(40), mm(5)),
            Foot.central(PlateOnTube.Way.TRANSVERSE, mm(40), mm(5)));
    Face face = new Face(Corners.at(150, 370, 170), Direction.UP, Direction.LEFT);
    Corner corner =
        new Corner(
            name,
            Corners.hub(),
            List.of(Corners.lower(), Corners.upper(), Corners.tieRod(), Corners.spring(0.6)));
    return new MountChain("lower fore", face, List.of(bolt, tab, weld, wall))
        .under(List.of(corner.under(name, Wrench.force(-1000, 0, 2000))), Factors.ROAD);
  }

  @ParameterizedTest
  @MethodSource("names")
  void of_joints(String name) throws Exception {
    ChainSheet sheet = mount(name);
    HostilePages.assertText(sheet);
    HostilePages.assertText(sheet.chain());
    HostilePages.assertText(sheet.sheet());
    HostilePages.assertText(sheet.corners().get(0));
    HostilePages.assertText(MountTable.of("lower fore", name, sheet).and("n " + name, sheet));
  }

  private static Crash crash(String name) {
    CrushCurve shorter =
        CrushCurve.named("c " + name)
            .to(mm(10), kN(180), "first " + name)
            .to(mm(100), kN(190))
            .end();
    CrashModel.Motor motor = CrashModel.Motor.of(name, kg(58)).on(kNpmm(0.6), mm(12), kNpmm(8));
    return CrashModel.of(name, kmh(50), kg(720), shorter).with(motor).run();
  }

  private static Occupant person(String name) {
    return Occupant.of(
            name, kg(80), Occupant.Belt.between(Npmm(50), Npmm(90)).slack(mm(10), mm(40)))
        .clearance("to " + name, mm(250), mm(300))
        .anchorage("at " + name, 0.6, Range.ratio(1, 1.5), deg(45));
  }

  private static RigidOrCrush choice(String name) {
    CrushCurve rail =
        CrushCurve.named("r " + name).to(mm(8), kN(300), name).to(mm(700), kN(310)).end();
    CrushTube tube =
        CrushTube.square("t " + name, mm(60), mm(1.5)).of(mm(350), steel(name)).triggered();
    return RigidOrCrush.of(
        Scene.of(name, kmh(50), kg(720), Obstacle.rigidWall()),
        new RigidOrCrush.Rails(rail, rail),
        person(name),
        RigidOrCrush.Design.bare(name),
        RigidOrCrush.Design.with("d " + name, tube, mm(350)));
  }

  @ParameterizedTest
  @MethodSource("names")
  void of_a_crash_and_those_in_it(String name) throws Exception {
    Scene meeting = Scene.of(name, kmh(80), kg(720), Obstacle.vehicle(kg(1400), kNpmm(1)));
    Pulse pulse = Pulse.through(name, new double[] {0, 0.05}, new double[] {0, 200});
    RigidOrCrush choice = choice(name);
    for (Object value :
        List.of(
            meeting,
            meeting.springs(kNpmm(0.5)),
            pulse,
            crash(name),
            person(name).in(kmh(50), pulse),
            person(name).closedForms(g(20), kmh(48)).get(0),
            choice,
            choice.outcomes().get(1).crashes().get(0),
            CrushTube.square("t " + name, mm(60), mm(1.5)).of(mm(350), steel(name)).triggered())) {
      HostilePages.assertText(value);
    }
  }
}

package rungwork;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaModifier.PUBLIC;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The order of the rooms, and what each room must not know. */
class RoomsTest {
  /** A room may import only rooms that stand before it. */
  private static final List<String> ORDER =
      List.of(
          "fault",
          "csv",
          "quantity",
          "material",
          "section",
          "frame",
          "solve",
          "check",
          "joint",
          "vehicle",
          "loadpath",
          "impact",
          "study",
          "record",
          "report",
          "notebook");

  /** Outside the order: imports no room, and only the last room may import it. */
  private static final String KERNEL = "kernel";

  /** What the order allows and a room must not know all the same. */
  private static final Map<String, Set<String>> MUST_NOT_KNOW =
      Map.of("section", Set.of("material"), "vehicle", Set.of("joint"));

  private static final int MOST_PUBLIC_TYPES = 15;

  private static final Path SOURCES = Path.of("src", "main", "java", "rungwork");

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("rungwork");

  static List<String> rooms() {
    return Stream.concat(ORDER.stream(), Stream.of(KERNEL)).toList();
  }

  static List<String> engineering_rooms() {
    return ORDER.stream().filter(room -> !room.equals("notebook")).toList();
  }

  @Test
  void every_package_is_a_known_room_and_stands_right_below_the_root() {
    Set<String> known = rooms().stream().map(RoomsTest::packageOf).collect(Collectors.toSet());
    Set<String> unknown =
        MAIN.stream()
            .map(JavaClass::getPackageName)
            .filter(name -> !known.contains(name))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), unknown, "packages that are no room");
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void a_room_imports_only_rooms_above_it(String room) {
    String[] allowed =
        rooms().stream()
            .filter(other -> mayImport(room, other))
            .map(RoomsTest::packageOf)
            .toArray(String[]::new);
    check(
        noClasses()
            .that()
            .resideInAPackage(packageOf(room))
            .should()
            .dependOnClassesThat(
                resideInAPackage("rungwork..").and(resideOutsideOfPackages(allowed))));
  }

  @Test
  void the_order_itself_says_what_the_design_says() {
    assertAll(
        () -> assertTrue(mayImport("report", "study")),
        () -> assertTrue(mayImport("notebook", KERNEL)),
        () -> assertEquals(List.of("fault"), importable("fault")),
        () -> assertEquals(List.of(KERNEL), importable(KERNEL)),
        () -> assertEquals(List.of("fault", "csv", "quantity", "material"), importable("material")),
        () -> assertEquals(List.of("fault", "csv", "quantity", "section"), importable("section")),
        () -> assertEquals(rooms(), importable("notebook")),
        () -> assertEquals(engineering_rooms(), importable("report")));
  }

  @Test
  void there_are_no_cycles() {
    check(slices().matching("rungwork.(*)..").should().beFreeOfCycles());
  }

  @Test
  void the_first_room_uses_only_the_java_library() {
    check(
        classes()
            .that()
            .resideInAPackage("rungwork.fault")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("java..", "rungwork.fault"));
  }

  @Test
  void tables_are_used_only_by_study_and_report() {
    check(onlyIn("tech.tablesaw..", "rungwork.study", "rungwork.report"));
  }

  @Test
  void the_notebook_protocol_is_used_only_by_the_kernel_and_the_notebook() {
    check(onlyIn("io.github.spencerpark..", "rungwork.kernel", "rungwork.notebook"));
    check(onlyIn("org.zeromq..", "rungwork.kernel", "rungwork.notebook"));
    check(onlyIn("jdk.jshell..", "rungwork.kernel", "rungwork.notebook"));
  }

  @ParameterizedTest
  @MethodSource("engineering_rooms")
  void an_engineering_room_neither_logs_nor_prints_nor_reflects(String room) {
    check(
        noClasses()
            .that()
            .resideInAPackage(packageOf(room))
            .should(ACCESS_STANDARD_STREAMS)
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.util.logging..", "org.slf4j..", "java.lang.reflect.."));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void a_room_shows_at_most_fifteen_types(String room) {
    List<String> shown =
        MAIN.stream()
            .filter(type -> type.getPackageName().equals(packageOf(room)))
            .filter(type -> type.isTopLevelClass() && type.getModifiers().contains(PUBLIC))
            .map(JavaClass::getSimpleName)
            .sorted()
            .toList();
    assertTrue(
        shown.size() <= MOST_PUBLIC_TYPES,
        () -> room + " shows " + shown.size() + " types: " + shown);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void a_room_has_a_door_that_says_what_it_is_for(String room) throws IOException {
    String door = Files.readString(SOURCES.resolve(room).resolve("package-info.java"));
    assertTrue(door.contains("package " + packageOf(room) + ";"), door);
    String prose = door.substring(door.indexOf("/**") + 3, door.indexOf("*/"));
    assertTrue(prose.split("\\s+").length > 30, () -> room + "'s door says too little: " + prose);
  }

  @Test
  void no_class_inherits_from_a_class_of_ours() {
    List<String> heirs =
        MAIN.stream()
            .filter(type -> type.getRawSuperclass().filter(RoomsTest::isClassOfOurs).isPresent())
            .map(JavaClass::getName)
            .toList();
    assertEquals(List.of(), heirs, "classes that inherit from a class of ours");
  }

  @Test
  void nothing_static_changes() {
    check(fields().that().areStatic().should().beFinal());
  }

  @Test
  void names_say_what_a_thing_is() {
    check(
        noClasses()
            .should()
            .haveNameMatching(".*(Manager|Helper|Helpers|Util|Utils|Impl|Base|Abstract\\w*)"));
  }

  private static String packageOf(String room) {
    return "rungwork." + room;
  }

  /** The body of an enum constant inherits from its enum; that is no inheritance to avoid. */
  private static boolean isClassOfOurs(JavaClass type) {
    return type.getPackageName().startsWith("rungwork") && !type.isEnum();
  }

  private static List<String> importable(String room) {
    return rooms().stream().filter(other -> mayImport(room, other)).toList();
  }

  private static boolean mayImport(String room, String other) {
    if (room.equals(other)) {
      return true;
    }
    if (room.equals(KERNEL) || other.equals(KERNEL)) {
      return room.equals("notebook");
    }
    return ORDER.indexOf(other) < ORDER.indexOf(room)
        && !MUST_NOT_KNOW.getOrDefault(room, Set.of()).contains(other);
  }

  private static ArchRule onlyIn(String library, String... packages) {
    return noClasses()
        .that(resideOutsideOfPackages(packages))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library);
  }

  private static void check(ArchRule rule) {
    // A room may still be empty; that every room has its door is tested by itself.
    rule.allowEmptyShould(true).check(MAIN);
  }
}

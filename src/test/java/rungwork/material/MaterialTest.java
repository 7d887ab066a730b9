package rungwork.material;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.GPa;
import static rungwork.quantity.Quantities.MPa;
import static rungwork.quantity.Quantities.kgpm3;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import rungwork.fault.ModelException;
import rungwork.material.RatedMaterial.Strength;

class MaterialTest {
  private static final Elasticity STEEL = new Elasticity(210e9, 0.3, 7850);
  private static final Strength STRENGTH = new Strength(355e6, 470e6, 355e6, 0.2);
  private static final Source SOURCE = new Source("EN 10219-1", Source.Tag.SECOND_HAND);

  @Test
  void a_grade_is_found_however_it_is_written() {
    assertSame(Material.named("S355J2H"), Material.named(" s355 j2h "));
    assertEquals("6061-T6", Material.named("6061T6").name());
  }

  @Test
  void a_rated_grade_has_strength_stiffness_and_a_source() {
    RatedMaterial grade = Material.rated("S355J2H");
    assertEquals(355e6, grade.strength().yield());
    assertEquals(470e6, grade.strength().ultimate());
    assertEquals(355e6, grade.strength().weldedYield());
    assertEquals(0.20, grade.strength().elongation(), 1e-15);
    assertEquals(STEEL, grade.elasticity());
    assertEquals(
        "EN 10219-1, edition 2006; cold-formed hollow section; wall 3 to 16 mm (second-hand)",
        grade.source().toString());
  }

  @Test
  void a_materials_text_says_strengths_and_source() {
    assertEquals(
        "6061-T6: yield 240 MPa, beside welds 115 MPa, ultimate 290 MPa, E 69.0 GPa;"
            + " student-competition rules F.3.5.3, edition not dated; beside a weld the ultimate"
            + " strength falls to 175 MPa; elongation from memory (read in the source)",
        Material.named("6061-T6").toString());
    assertEquals(
        "A513 electric-welded: no guaranteed strength, E 200 GPa; ASTM A513, edition 08a; grades"
            + " 1010 to 1020; no tensile requirement unless the order states one (second-hand)",
        Material.named("A513 electric-welded").toString());
  }

  @Test
  void an_unknown_grade_is_refused_with_the_known_ones() {
    String known =
        Material.catalogue().stream().map(Material::name).collect(Collectors.joining(", "));
    assertTrue(known.startsWith("S235JRH, S275J2H, S355J2H, S235JR, "), known);
    refused("unknown grade S999; known are " + known, () -> Material.named("S999"));
    refused("a grade has no name; give it one", () -> Material.named(" "));
  }

  @Test
  void a_grade_without_guaranteed_strength_gives_none() {
    refused(
        "A513 electric-welded has no guaranteed strength; state it: Material.unrated(\"A513"
            + " electric-welded\").stating(MPa(…), MPa(…), \"mill certificate …\")",
        () -> Material.rated("A513 electric-welded"));
    refused(
        "S355J2H has a guaranteed strength; take Material.rated(\"S355J2H\")",
        () -> Material.unrated("S355J2H"));
  }

  @Test
  void a_stated_strength_shows_in_the_name_and_the_source() {
    RatedMaterial stated =
        Material.unrated("A513 electric-welded")
            .stating(MPa(230), MPa(330), "mill certificate 1234");
    assertEquals("A513 electric-welded (strength stated by the user)", stated.name());
    assertEquals(
        "A513 electric-welded (strength stated by the user): yield 230 MPa, beside welds 230 MPa,"
            + " ultimate 330 MPa, E 200 GPa; mill certificate 1234 (stated by the user)",
        stated.toString());
    assertEquals(
        stated,
        new RatedMaterial(stated.name(), stated.elasticity(), stated.strength(), stated.source()));
  }

  @Test
  void a_statement_needs_evidence_and_sense() {
    UnratedMaterial plain = Material.unrated("A513 electric-welded");
    refused(
        "a statement of strength has no name; give it one",
        () -> plain.stating(MPa(230), MPa(330), " "));
    refused(
        "ultimate strength 200.0 MPa is below the yield strength 230.0 MPa",
        () -> plain.stating(MPa(230), MPa(200), "mill certificate 1234"));
  }

  @Test
  void elastic_constants_come_typed_too_and_give_the_shear_modulus() {
    Elasticity steel = Elasticity.of(GPa(210), 0.3, kgpm3(7850));
    assertEquals(STEEL, steel);
    assertEquals(210e9 / 2.6, steel.shearModulus(), 1);
  }

  @Test
  void what_no_metal_has_is_refused() {
    assertAll(
        () ->
            refused("Young's modulus 0 GPa is not above zero", () -> new Elasticity(0, 0.3, 7850)),
        () ->
            refused("density -1.000 kg/m³ is not above zero", () -> new Elasticity(210e9, 0.3, -1)),
        () ->
            refused(
                "Poisson's ratio 0.5000 is outside 0 to below 0.5; steel has 0.30",
                () -> new Elasticity(210e9, 0.5, 7850)),
        () ->
            refused(
                "Poisson's ratio not a number is outside 0 to below 0.5; steel has 0.30",
                () -> new Elasticity(210e9, Double.NaN, 7850)),
        () ->
            refused("yield strength 0 MPa is not above zero", () -> new Strength(0, 1e6, 1e6, 0.2)),
        () ->
            refused(
                "welded-zone yield strength 240.0 MPa is above the yield strength 235.0 MPa",
                () -> new Strength(235e6, 360e6, 240e6, 0.2)),
        () ->
            refused(
                "elongation -0.1000 is below zero", () -> new Strength(235e6, 360e6, 235e6, -0.1)),
        () ->
            refused(
                "a material has no name; give it one",
                () -> new RatedMaterial("", STEEL, STRENGTH, SOURCE)),
        () ->
            refused(
                "a material has no name; give it one",
                () -> new UnratedMaterial("", STEEL, SOURCE)));
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }
}

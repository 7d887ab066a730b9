package rungwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.check.Basis;
import rungwork.check.DesignFactor;

class FactorsTest {
  @Test
  void factors_that_would_raise_a_capacity_are_refused() {
    Refused.with(
        "γM2 0.9000 is below 1; it would raise the capacity",
        () -> new Factors(DesignFactor.NONE, 0.9, 0.75));
    Refused.with(
        "φ 1.100 is outside above 0 to 1", () -> new Factors(DesignFactor.NONE, 1.25, 1.1));
    Refused.with("φ 0 is outside above 0 to 1", () -> new Factors(DesignFactor.NONE, 1.25, 0));
    assertEquals(Factors.UNFACTORED, new Factors(DesignFactor.NONE, 1, 1));
  }

  @Test
  void only_what_is_divided_by_nothing_counts_as_unfactored() {
    Factors none = Factors.UNFACTORED;
    for (Basis basis : List.of(none.yield(), none.ultimate(), none.american())) {
      assertTrue(Factors.unfactored(basis));
    }
    Factors code = new Factors(DesignFactor.NONE, 1.25, 0.75);
    for (Basis basis : List.of(Factors.ROAD.yield(), code.ultimate(), code.american())) {
      assertFalse(Factors.unfactored(basis));
    }
    assertFalse(Factors.unfactored(Factors.proportion()));
  }
}

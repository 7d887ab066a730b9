package rungwork.joint;

import org.junit.jupiter.api.Test;
import rungwork.check.DesignFactor;

class FactorsTest {
  @Test
  void factors_that_would_raise_a_capacity_are_refused() {
    Refused.with(
        "γM2 0.9000 is below 1; it would raise the capacity",
        () -> new Factors(DesignFactor.NONE, 0.9, 0.75));
    Refused.with(
        "φ 1.100 is outside above 0 to 1", () -> new Factors(DesignFactor.NONE, 1.25, 1.1));
  }
}

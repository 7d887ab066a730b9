package rungwork.validation;

import org.junit.jupiter.api.Test;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;

class UnitsValidationTest {
  @Test
  void a_foot_pound_a_degree_is_1_3558_newton_metres_a_degree() {
    double inMetric =
        Units.INCH_POUND.scale(Kind.ROTATIONAL_STIFFNESS).inSi()
            / Units.METRIC.scale(Kind.ROTATIONAL_STIFFNESS).inSi();
    Published.identity("inch 25.4 mm, pound 0.45359237 kg, g 9.80665 m/s²", "1 lbf·ft/deg")
        .value("torsional stiffness", "N·m/deg", "1.3558", inMetric);
  }
}

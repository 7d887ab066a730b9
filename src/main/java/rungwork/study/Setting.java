package rungwork.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import rungwork.fault.ModelException;
import rungwork.quantity.Kind;
import rungwork.quantity.Quantities;
import rungwork.quantity.Units;

/** One value for each input of a study: what a model is built from. Immutable. */
public final class Setting {
  private final Map<String, Input> inputs;
  private final double[] values;

  private Setting(Map<String, Input> inputs, double[] values) {
    this.inputs = inputs;
    this.values = values;
  }

  /** All inputs as designed. */
  static Setting of(List<Input> inputs) {
    Map<String, Input> byName = new LinkedHashMap<>();
    for (Input input : inputs) {
      if (byName.putIfAbsent(input.name(), input) != null) {
        throw new ModelException("two inputs are named " + input.name() + "; rename one");
      }
    }
    return new Setting(byName, inputs.stream().mapToDouble(Input::value).toArray());
  }

  /** The same with other values, in the order of the inputs. */
  Setting with(double[] others) {
    return new Setting(inputs, others.clone());
  }

  /** The same with another value of one input. */
  Setting with(Input input, double value) {
    double[] others = values.clone();
    others[List.copyOf(inputs.keySet()).indexOf(input(input.name()).name())] = value;
    return new Setting(inputs, others);
  }

  /**
   * A value in SI units.
   *
   * @param input the input's name
   * @return its value [SI]
   * @throws ModelException when there is no input of that name
   */
  public double si(String input) {
    int index = 0;
    for (String name : inputs.keySet()) {
      if (name.equals(input)) {
        return values[index];
      }
      index++;
    }
    throw unknown(input);
  }

  /**
   * A length.
   *
   * @param input the input's name
   * @return its value
   */
  public Quantity<Length> length(String input) {
    return Quantities.m(si(input, Kind.LENGTH));
  }

  /**
   * A mass.
   *
   * @param input the input's name
   * @return its value
   */
  public Quantity<Mass> mass(String input) {
    return Quantities.kg(si(input, Kind.MASS));
  }

  /**
   * A stress or strength.
   *
   * @param input the input's name
   * @return its value
   */
  public Quantity<Pressure> stress(String input) {
    return Quantities.MPa(si(input, Kind.STRESS) / 1e6);
  }

  /**
   * An acceleration.
   *
   * @param input the input's name
   * @return its value
   */
  public Quantity<Acceleration> acceleration(String input) {
    return Quantities.mps2(si(input, Kind.ACCELERATION));
  }

  /**
   * A speed.
   *
   * @param input the input's name
   * @return its value
   */
  public Quantity<Speed> speed(String input) {
    return Quantities.mps(si(input, Kind.SPEED));
  }

  /**
   * A bare number.
   *
   * @param input the input's name
   * @return its value [1]
   */
  public double number(String input) {
    return si(input, Kind.NUMBER);
  }

  private double si(String input, Kind kind) {
    Input known = input(input);
    if (known.kind() != kind) {
      throw new ModelException(
          "input %s is a %s, not a %s".formatted(input, known.kind().noun(), kind.noun()));
    }
    return si(input);
  }

  /** An input by its name. */
  Input input(String input) {
    return Optional.ofNullable(inputs.get(input)).orElseThrow(() -> unknown(input));
  }

  private ModelException unknown(String input) {
    return new ModelException(
        "there is no input named %s; there are %s"
            .formatted(input, String.join(", ", inputs.keySet())));
  }

  @Override
  public String toString() {
    return String.join(
        ", ",
        inputs.values().stream()
            .map(input -> input.name() + " " + Units.METRIC.show(input.kind(), si(input.name())))
            .toList());
  }
}

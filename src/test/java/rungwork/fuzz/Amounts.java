package rungwork.fuzz;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import rungwork.quantity.Density;
import rungwork.quantity.LineLoad;
import rungwork.quantity.Moment;
import rungwork.quantity.MomentOfInertia;
import rungwork.quantity.Quantities;
import rungwork.quantity.RotationalStiffness;
import rungwork.quantity.SecondMoment;
import rungwork.quantity.SectionModulus;
import rungwork.quantity.Stiffness;

/** Typed quantities and bare numbers of sizes that a workshop knows, and others. */
final class Amounts {
  /** Each kind's maker and the usual range of its number. */
  private record Usual(DoubleFunction<Quantity<?>> maker, double least, double most) {
    Quantity<?> draw(Random random) {
      return maker.apply(between(least, most, random));
    }

    /** As a units library gives it, past our own makers. */
    Quantity<?> foreign(double number) {
      return tech.units.indriya.quantity.Quantities.getQuantity(number, maker.apply(1).getUnit());
    }
  }

  private static final Map<Class<?>, Usual> USUAL = new LinkedHashMap<>();

  static {
    USUAL.put(Length.class, new Usual(Quantities::mm, 1, 3000));
    USUAL.put(Area.class, new Usual(Quantities::mm2, 10, 5000));
    USUAL.put(Force.class, new Usual(Quantities::kN, 0.1, 300));
    USUAL.put(Mass.class, new Usual(Quantities::kg, 0.1, 1500));
    USUAL.put(Pressure.class, new Usual(Quantities::MPa, 1, 250_000));
    USUAL.put(Acceleration.class, new Usual(Quantities::g, 0.1, 60));
    USUAL.put(Speed.class, new Usual(Quantities::kmh, 1, 120));
    USUAL.put(Energy.class, new Usual(Quantities::kJ, 0.1, 200));
    USUAL.put(Time.class, new Usual(Quantities::ms, 0.1, 500));
    USUAL.put(Angle.class, new Usual(Quantities::deg, 0.1, 180));
    USUAL.put(Stiffness.class, new Usual(Quantities::Npmm, 1, 100_000));
    USUAL.put(RotationalStiffness.class, new Usual(Quantities::Nmpdeg, 1, 10_000));
    USUAL.put(Moment.class, new Usual(Quantities::kNm, 0.01, 50));
    USUAL.put(LineLoad.class, new Usual(Quantities::Npm, 1, 10_000));
    USUAL.put(SecondMoment.class, new Usual(Quantities::cm4, 0.1, 1000));
    USUAL.put(SectionModulus.class, new Usual(Quantities::cm3, 0.1, 300));
    USUAL.put(Density.class, new Usual(Quantities::kgpm3, 1000, 9000));
    USUAL.put(MomentOfInertia.class, new Usual(Quantities::kgm2, 0.1, 1000));
  }

  private Amounts() {}

  static Quantity<?> usual(Class<?> kind, Random random) {
    return USUAL.get(kind).draw(random);
  }

  static Quantity<?> hostile(Class<?> kind, Random random) {
    return USUAL.get(kind).foreign(Hostile.finite(random));
  }

  /** Sorts the lengths among arguments from long to short, as depth, width and wall usually are. */
  static void fallingLengths(Object[] arguments) {
    List<Integer> places =
        IntStream.range(0, arguments.length).filter(i -> isLength(arguments[i])).boxed().toList();
    List<Object> sorted =
        places.stream()
            .map(i -> arguments[i])
            .sorted(Comparator.comparing(one -> -number((Quantity<?>) one)))
            .toList();
    for (int i = 0; i < sorted.size(); i++) {
      arguments[places.get(i)] = sorted.get(i);
    }
  }

  private static boolean isLength(Object value) {
    return value instanceof Quantity<?> one
        && one.getUnit().isCompatible(tech.units.indriya.unit.Units.METRE);
  }

  private static double number(Quantity<?> quantity) {
    return quantity.getValue().doubleValue();
  }

  static Class<?> anyKind(Random random) {
    List<Class<?>> kinds = List.copyOf(USUAL.keySet());
    return kinds.get(random.nextInt(kinds.size()));
  }

  /** A bare number in SI units: lengths of walls, stresses and all between. */
  static double number(Random random) {
    double sign = random.nextInt(5) == 0 ? -1 : 1;
    return switch (random.nextInt(4)) {
      case 0 -> random.nextInt(4);
      case 1 -> sign * between(1e-3, 3, random);
      case 2 -> sign * between(0.1, 1000, random);
      default -> sign * between(1e-9, 1e9, random);
    };
  }

  private static double between(double least, double most, Random random) {
    return least * Math.pow(most / least, random.nextDouble());
  }
}

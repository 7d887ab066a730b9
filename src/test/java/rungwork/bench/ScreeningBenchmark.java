package rungwork.bench;

import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.section.Section;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Assessment.Screened;
import rungwork.vehicle.Assessment.Stocks;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.LadderBuilder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;
import rungwork.vehicle.VehicleBuilder;

/**
 * A whole variant of a ladder as a screening has it: 5 crossmembers and 8 mounts, 8 events whose
 * loads follow the frame's mass, the frame solved with rigid joints, every check of every member,
 * without its working; the rails and three crossmembers from catalogues.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ScreeningBenchmark {
  private static final Material STEEL = Material.named("S355J2H");
  private static final Stock FIXED = tube(50, 50, 3);

  private static final int WARMING = 50_000;

  private final List<Stock> rails = new ArrayList<>();
  private final List<Stock> fronts = new ArrayList<>();
  private final Assessment.Screening screening;
  private int next;

  /** Plans the screening; not timed. */
  public ScreeningBenchmark() {
    for (double height = 60; height <= 120; height += 10) {
      for (double wall : new double[] {2.5, 3, 4, 5}) {
        rails.add(tube(height, 50, wall));
      }
    }
    for (double side = 30; side <= 80; side += 10) {
      for (double wall : new double[] {2, 2.5, 3, 4}) {
        fronts.add(tube(side, side, wall));
      }
    }
    screening = Assessment.screening(vehicle(), ladder(), events(), List.of(Joints.RIGID)).get();
  }

  /**
   * Runs so many variants that no method is compiled any more while others are timed; it takes more
   * than the usual warming up.
   */
  @Setup
  public void warm() {
    for (int i = 0; i < WARMING; i++) {
      screening.of(variant(i));
    }
  }

  static Stock tube(double height, double width, double wall) {
    return new Stock(Section.rectangularTube(mm(height), mm(width), mm(wall)), STEEL);
  }

  private static Point at(double x, double y, double z) {
    return Point.at(mm(x), mm(y), mm(z));
  }

  static Ladder ladder() {
    LadderBuilder ladder =
        Ladder.named("Curlew").level(mm(360)).rails(mm(420), mm(-2300), mm(700), tube(100, 50, 3));
    double[] stations = {160, -420, -1000, -1600, -2300};
    for (int i = 0; i < stations.length; i++) {
      ladder.crossmember("station " + (i + 1), mm(stations[i]), FIXED);
    }
    for (Side side : Side.values()) {
      double y = side.sign() * 420;
      ladder
          .mount("front " + side.word() + " arm", side, at(20, y, 300))
          .mount("front " + side.word() + " coilover", side, at(0, y, 560))
          .mount("rear " + side.word() + " arm", side, at(-1700, y, 300))
          .mount("rear " + side.word() + " coilover", side, at(-2040, y, 560));
    }
    return ladder.build();
  }

  static Vehicle vehicle() {
    VehicleBuilder vehicle =
        Vehicle.named("Curlew")
            .wheelbase(mm(2000))
            .track(mm(1250), mm(1250))
            .frontRollShare(0.55)
            .mass("motor", kg(58), at(-1950, 0, 390), "station 4 left", "station 5 right")
            .mass("battery", kg(120), at(-1250, 0, 420), "station 3 left", "station 4 right")
            .mass("body", kg(218), at(-650, 0, 850), "station 2 left", "station 3 right")
            .mass("load", kg(134), at(-1850, 0, 800), "station 4 left", "station 5 right");
    for (Side side : Side.values()) {
      String word = side.word();
      vehicle
          .seat(
              word + " person",
              kg(75),
              at(-950, side.sign() * 300, 760),
              "station 2 " + word,
              "station 3 " + word)
          .wheel(Axle.FRONT, side, "front " + word + " arm", "front " + word + " coilover")
          .wheel(Axle.REAR, side, "rear " + word + " arm", "rear " + word + " coilover");
    }
    return vehicle.build();
  }

  static List<Event> events() {
    return List.of(
        Event.bumpBothWheels(Axle.FRONT),
        Event.bumpBothWheels(Axle.REAR),
        Event.bumpOneWheel(Axle.FRONT, Side.LEFT),
        Event.pureTwist(),
        Event.braking(g(1)),
        Event.cornering(Side.LEFT, g(0.5)),
        Event.potholeBraking(Axle.FRONT, Side.LEFT),
        Event.brakingInTurn(Side.LEFT, g(0.4), g(0.4)));
  }

  /**
   * One variant on one thread.
   *
   * @return its numbers
   */
  @Benchmark
  public Screened one_variant() {
    return screening.of(variant(next++));
  }

  /**
   * One variant on each of two threads at a time.
   *
   * @return as for one variant
   */
  @Benchmark
  @Threads(2)
  public Screened one_variant_on_each_of_two_threads() {
    return screening.of(variant(next++));
  }

  /** The numbers of a variant. */
  Screened screened(int number) {
    return screening.of(variant(number));
  }

  /** A variant by its number, neighbours unlike each other. */
  private Stocks variant(int number) {
    int mixed = Math.floorMod(number * 7919, rails.size() * fronts.size() * fronts.size());
    Stock front = fronts.get(mixed % fronts.size());
    Stock second = fronts.get(mixed / fronts.size() % fronts.size());
    Stock rail = rails.get(mixed / fronts.size() / fronts.size());
    return new Stocks(rail, List.of(front, second, FIXED, FIXED, front));
  }
}

package rungwork.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.check.Verdict.Amount;
import rungwork.fault.Scale;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.quantity.Kind;
import rungwork.record.Datum.Value;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Mount;
import rungwork.vehicle.Rail;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/**
 * What was put into a calculation about a vehicle and its frame, and what it computed from that.
 */
final class DesignData {
  private DesignData() {}

  /** What a vehicle's builder put in, no origin stated yet. */
  static List<Datum> of(Vehicle vehicle) {
    List<Datum> data = new ArrayList<>();
    data.add(length("wheelbase", vehicle.wheelbase()));
    for (Axle axle : Axle.values()) {
      data.add(length(axle.word() + " track", vehicle.track(axle)));
    }
    Amount share = new Amount(Kind.RATIO, vehicle.frontRollShare());
    data.add(Datum.of("front share of roll stiffness", Value.of(share)));
    for (Mass mass : vehicle.masses()) {
      if (!vehicle.frameMasses().contains(mass)) {
        Amount size = new Amount(Kind.MASS, mass.kilograms());
        data.add(Datum.of(mass.name(), Value.of(size).at(mass.at())));
      }
    }
    return data;
  }

  private static Datum length(String what, double metres) {
    return Datum.of(what, Value.of(Amount.length(metres)));
  }

  /** What a frame's builder put in, no origin stated yet. */
  static List<Datum> of(Ladder ladder) {
    List<Datum> data = new ArrayList<>();
    for (Side side : Side.values()) {
      Rail rail = ladder.rail(side);
      data.add(Datum.of(side.word() + " rail", rail(rail).at(tip(ladder, rail))));
    }
    for (Ladder.KickUp kickUp : ladder.kickUps()) {
      data.add(length("rise of kick-up " + kickUp.name(), kickUp.rise()));
    }
    for (Crossmember one : ladder.crossmembers()) {
      Point place = new Point(one.x(), 0, ladder.heightAt(one.x()));
      data.add(Datum.of(one.part(), Value.of(words(one.stock())).at(place)));
    }
    for (Mount mount : ladder.mounts()) {
      data.add(Datum.of("mount " + mount.name(), Value.of("on " + mount.member()).at(mount.at())));
    }
    return data;
  }

  private static Point tip(Ladder ladder, Rail rail) {
    return new Point(rail.x(), rail.y(), ladder.heightAt(rail.x()));
  }

  private static Value rail(Rail rail) {
    List<String> stocks =
        rail.reaches().stream().map(reach -> words(reach.stock())).distinct().toList();
    return Value.of(String.join("; then ", stocks));
  }

  private static String words(Stock stock) {
    return stock.section().name() + ", " + stock.material().name();
  }

  /** What follows from a vehicle's data and can be weighed, by name. */
  static Map<String, Amount> computed(Vehicle vehicle) {
    Map<String, Amount> figures = new LinkedHashMap<>();
    figures.put("mass", new Amount(Kind.MASS, vehicle.massTotal()));
    vehicle
        .axleLoads()
        .forEach((axle, newtons) -> figures.put(axle.word() + " axle load", carried(newtons)));
    vehicle
        .wheelLoads()
        .forEach((wheel, newtons) -> figures.put(wheel.name() + " load", carried(newtons)));
    return figures;
  }

  /** As a workshop's scales show it. */
  private static Amount carried(double newtons) {
    return new Amount(Kind.MASS, newtons / Scale.G.inSi());
  }
}

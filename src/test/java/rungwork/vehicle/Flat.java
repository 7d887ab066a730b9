package rungwork.vehicle;

import static rungwork.quantity.Quantities.kg;

/** A vehicle with all its masses at the height of the rails and off to the left. */
final class Flat {
  private Flat() {}

  static Vehicle vehicle() {
    VehicleBuilder flat =
        Vehicle.named("flat")
            .wheelbase(rungwork.quantity.Quantities.mm(2200))
            .track(rungwork.quantity.Quantities.mm(1300), rungwork.quantity.Quantities.mm(1300))
            .frontRollShare(0.5)
            .mass("block", kg(300), Curlew.at(-900, 150, 380), "middle left", "middle right")
            .mass("plate", kg(100), Curlew.at(-2000, 0, 380), "rear left", "rear right")
            .seat("driver", kg(75), Curlew.at(-1100, 300, 380), "seat left front");
    for (Side side : Side.values()) {
      flat.wheel(Axle.FRONT, side, "front " + side.word() + " arm ahead")
          .wheel(Axle.REAR, side, "rear " + side.word() + " spring");
    }
    return flat.build();
  }
}

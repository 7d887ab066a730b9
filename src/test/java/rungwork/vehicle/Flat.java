package rungwork.vehicle;

import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

/** A vehicle with all its masses at the height of the rails and off to the left. */
final class Flat {
  private Flat() {}

  /** The same without the driver and with the block in the middle. */
  static Vehicle centred() {
    return wheels(
        Vehicle.named("centred")
            .mass("block", kg(300), Curlew.at(-900, 0, 380), "front left", "front right")
            .mass("plate", kg(100), Curlew.at(-2000, 0, 380), "rear left", "rear right"));
  }

  static Vehicle vehicle() {
    return wheels(
        Vehicle.named("flat")
            .mass("block", kg(300), Curlew.at(-900, 150, 380), "middle left", "middle right")
            .mass("plate", kg(100), Curlew.at(-2000, 0, 380), "rear left", "rear right")
            .seat("driver", kg(75), Curlew.at(-1100, 300, 380), "seat left front"));
  }

  private static Vehicle wheels(VehicleBuilder flat) {
    flat.wheelbase(mm(2200)).track(mm(1300), mm(1300)).frontRollShare(0.5);
    for (Side side : Side.values()) {
      flat.wheel(Axle.FRONT, side, "front " + side.word() + " arm ahead")
          .wheel(Axle.REAR, side, "rear " + side.word() + " spring");
    }
    return flat.build();
  }
}

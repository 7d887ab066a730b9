package rungwork.loadpath;

import java.util.List;
import rungwork.loadpath.SuspensionMember.Bar;

/** A beam axle on two lower links, an upper one, a rod across and two springs; invented. */
public final class Axles {
  private Axles() {}

  public static BeamAxle rear() {
    Hub left = Hub.brakedInWheel(Corners.at(-2000, 600, 300), Corners.at(-2000, 600, 0));
    Hub right = Hub.brakedInWheel(Corners.at(-2000, -600, 300), Corners.at(-2000, -600, 0));
    return new BeamAxle(
        "rear axle",
        left,
        right,
        List.of(
            Bar.toUpright(
                "left link",
                Corners.mount("left link mount", -1500, 400, 200),
                Corners.at(-2000, 400, 200)),
            Bar.toUpright(
                "right link",
                Corners.mount("right link mount", -1500, -400, 200),
                Corners.at(-2000, -400, 200)),
            Bar.toUpright(
                "upper link",
                Corners.mount("upper link mount", -1600, 0, 400),
                Corners.at(-2000, 0, 400)),
            Bar.toUpright(
                "rod across", Corners.mount("rod", -2000, 500, 300), Corners.at(-2000, -500, 300)),
            Bar.toUpright(
                "left spring",
                Corners.mount("left spring mount", -2000, 450, 700),
                Corners.at(-2000, 450, 300)),
            Bar.toUpright(
                "right spring",
                Corners.mount("right spring mount", -2000, -450, 700),
                Corners.at(-2000, -450, 300))));
  }
}

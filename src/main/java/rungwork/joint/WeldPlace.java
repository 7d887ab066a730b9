package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Step;

/**
 * One end of a weld's line and what it takes.
 *
 * @param name run, line and which end
 * @param shares of the load on a length of weld: along x, along y, out of the face
 * @param force all of them together
 * @param along what of them goes along the weld
 * @param across what of them goes across it, in the face
 */
record WeldPlace(String name, List<Step> shares, Step force, Step along, Step across) {

  /** Both ends of every line: every measure is convex along a line, so its worst is at an end. */
  static List<WeldPlace> of(WeldGroup weld, FaceLoad load) {
    Pattern pattern = weld.pattern();
    List<WeldPlace> places = new ArrayList<>();
    for (int run = 0; run < weld.runs().size(); run++) {
      List<Pattern.Line> lines = weld.runs().get(run).effective(weld.seam().deduction());
      for (int i = 0; i < lines.size(); i++) {
        Pattern.Line line = lines.get(i);
        String name = "run " + (run + 1) + ", line " + (i + 1);
        places.add(of(name + ", start", line, pattern.share(line.from(), load)));
        places.add(of(name + ", end", line, pattern.share(line.to(), load)));
      }
    }
    return places;
  }

  private static WeldPlace of(String name, Pattern.Line line, List<Step> shares) {
    double fx = shares.get(0).result();
    double fy = shares.get(1).result();
    double cx = (line.to().x() - line.from().x()) / line.length();
    double cy = (line.to().y() - line.from().y()) / line.length();
    Step force = WeldFormulas.FORCE.with(fx, fy, shares.get(2).result());
    Step along = WeldFormulas.ALONG.with(fx, cx, fy, cy);
    Step across = WeldFormulas.ACROSS.with(fy, cx, fx, cy);
    return new WeldPlace(name, shares, force, along, across);
  }

  /** What of the load pulls out of the face. */
  double out() {
    return shares.get(2).result();
  }
}

package rungwork.report;

import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.impact.OrderOfFailure;
import rungwork.record.Inspection;
import rungwork.section.Section;
import rungwork.study.Candidate;
import rungwork.study.Comparison;
import rungwork.study.Curlew;
import rungwork.study.Input;
import rungwork.study.Measure;
import rungwork.study.Scatter;
import rungwork.study.Search;
import rungwork.study.Study;
import rungwork.study.Survey;
import rungwork.vehicle.Assessment;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Event;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;
import rungwork.vehicle.Vehicle;

/** Names that break out, run backwards, break lines or never end, through the pages they reach. */
class HostileNamesTest {
  private static final Stock TUBE =
      new Stock(Section.rectangularTube(mm(80), mm(40), mm(3)), Curlew.STEEL);
  private static final Event HIT = Event.frontalImpact(g(2), Event.Hit.FULL_WIDTH);

  static List<String> names() {
    return HostilePages.names();
  }

  private static Ladder ladder(String name) {
    return Ladder.named(name)
        .level(mm(360))
        .rails(mm(420), mm(-2300), mm(700), TUBE)
        .crossmember(name, mm(160), TUBE)
        .crossmember("rear", mm(-2300), TUBE)
        .mount("m " + name, Side.LEFT, Point.at(mm(0), mm(420), mm(300)))
        .mount("right", Side.RIGHT, Point.at(mm(0), mm(-420), mm(300)))
        .mount("rear left spring", Side.LEFT, Point.at(mm(-2000), mm(420), mm(300)))
        .mount("rear right spring", Side.RIGHT, Point.at(mm(-2000), mm(-420), mm(300)))
        .build();
  }

  private static Vehicle vehicle(String name) {
    return Vehicle.named(name)
        .wheelbase(mm(2000))
        .track(mm(1250), mm(1250))
        .frontRollShare(0.55)
        .wheel(Axle.FRONT, Side.LEFT, "m " + name)
        .wheel(Axle.FRONT, Side.RIGHT, "right")
        .wheel(Axle.REAR, Side.LEFT, "rear left spring")
        .wheel(Axle.REAR, Side.RIGHT, "rear right spring")
        .mass(name, kg(300), Point.at(mm(-1000), mm(0), mm(600)), "m " + name, "right", "rear left")
        .seat("s " + name, kg(75), Point.at(mm(-900), mm(200), mm(700)), "m " + name, "rear left")
        .build();
  }

  private static Assessment assess(Ladder ladder, String name) {
    return Assessment.of(vehicle(name), ladder, List.of(HIT));
  }

  private static List<Object> shown(String name) {
    Ladder ladder = ladder(name);
    Vehicle vehicle = vehicle(name);
    Assessment assessment = assess(ladder, name);
    Study<Assessment> study =
        Study.of(
            name,
            List.of(Input.of(name, mm(3)).within(0.1, name)),
            setting -> assessment,
            List.of(Measure.frameMass()));
    return List.of(
        vehicle,
        ladder,
        LadderPlan.of(ladder).with(vehicle.on(ladder)).with(assessment.sheet()),
        assessment,
        assessment.response(HIT, Joints.RIGID),
        Comparison.of(
            name + " crossmember",
            List.of(new Candidate(name, TUBE)),
            candidate -> assess(ladder.withCrossmember(name, candidate.stock()), name)),
        Survey.of(
            name,
            List.of(new Survey.Variant<>(name, () -> assessment)),
            List.of(Measure.frameMass())),
        study.sensitivity(),
        study.scatter(Scatter.Sampling.latinHypercube(20, 1)),
        study.family(name, 3),
        Search.lightest(
            name,
            List.of(),
            List.of(new Survey.Variant<>(name, () -> ladder)),
            one -> assessment,
            List.of()),
        OrderOfFailure.of(vehicle, ladder, Event.Hit.FULL_WIDTH),
        Inspection.of(ladder));
  }

  @ParameterizedTest
  @MethodSource("names")
  void a_name_is_text_on_every_page_that_it_reaches(String name) throws Exception {
    for (Object value : shown(name)) {
      HostilePages.assertText(value);
    }
  }
}

package rungwork.report;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwork.check.Check;
import rungwork.check.CheckSheet;

/** How each part of a frame is drawn: by its governing check, or plain when nobody asked. */
final class PartColours {
  private final boolean judged;
  private final Map<String, Check> governing = new HashMap<>();
  private final Set<String> open = new HashSet<>();

  PartColours(Optional<CheckSheet> sheet) {
    judged = sheet.isPresent();
    sheet.ifPresent(this::read);
  }

  private void read(CheckSheet sheet) {
    sheet.governingByPart().forEach(check -> governing.put(check.part(), check));
    sheet.checks().stream().filter(c -> !c.made()).forEach(check -> open.add(check.part()));
  }

  /** The style-sheet classes of a part: colour, hatch, dashed edge. */
  String css(String part) {
    if (!judged) {
      return "steel";
    }
    if (!governing.containsKey(part)) {
      return "unknown";
    }
    String band = "band " + Look.band(utilisation(part));
    return open.contains(part) ? band + " open" : band;
  }

  /** What stands beside a part: its utilisation, or that it has none; empty when nobody asked. */
  String words(String part) {
    if (!judged) {
      return "";
    }
    return governing.containsKey(part) ? Numbers.utilisation(utilisation(part)) : "not checked";
  }

  /** A part's title: what a reader sees when pointing at it. */
  String title(String part) {
    if (!governing.containsKey(part)) {
      return judged ? part + ": not checked" : part;
    }
    Check check = governing.get(part);
    String rest = open.contains(part) ? "; not everything was checked" : "";
    return part + ": " + words(part) + ", " + check.what() + ", " + check.loadCase() + rest;
  }

  private double utilisation(String part) {
    return governing.get(part).utilisation().orElse(Double.NaN);
  }
}

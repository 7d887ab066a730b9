package rungwork.loadpath;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.joint.Joint;
import rungwork.joint.Pivot;
import rungwork.joint.Spot;
import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;

/** Whether a mount's one weld lies on its one tab. */
final class Touching {
  private Touching() {}

  /** Refuses a weld that reaches past the tab's foot by more than its size. */
  static void refuseApart(List<Joint> parts) {
    List<WeldGroup> welds = all(parts, WeldGroup.class);
    List<Pivot> pivots = all(parts, Pivot.class);
    List<Tab> tabs = all(parts, Tab.class);
    if (welds.size() != 1 || tabs.size() != 1) {
      return;
    }
    WeldGroup weld = welds.get(0);
    Tab tab = tabs.get(0);
    refuse(weld, tab, new Reach("along the foot", tab.plate().foot() / 2, Spot::x));
    acrossOf(tab, pivots)
        .ifPresent(across -> refuse(weld, tab, new Reach("along the pin", across, Spot::y)));
  }

  /** Half of what the plates take along the pin; nothing when a pair's distance is not given. */
  private static Optional<Double> acrossOf(Tab tab, List<Pivot> pivots) {
    double thickness = tab.plate().thickness();
    if (tab.plate().count() == Tab.Count.SINGLE) {
      return Optional.of(thickness / 2);
    }
    return pivots.stream()
        .map(Pivot::stack)
        .map(stack -> stack.centre() / 2 + stack.gap() + thickness)
        .findFirst();
  }

  private static void refuse(WeldGroup weld, Tab tab, Reach reach) {
    for (int run = 0; run < weld.runs().size(); run++) {
      for (Spot corner : weld.runs().get(run).corners()) {
        double far = Math.abs(reach.of().applyAsDouble(corner));
        if (far > reach.half() + weld.seam().size()) {
          throw new ModelException(
              "run "
                  + (run + 1)
                  + " of weld "
                  + weld.name()
                  + " reaches "
                  + Scale.MM.show(far)
                  + " "
                  + reach.way()
                  + " of tab "
                  + tab.name()
                  + ", which ends at "
                  + Scale.MM.show(reach.half())
                  + "; a weld lies on the outline of what it holds");
        }
      }
    }
  }

  private static <T> List<T> all(List<Joint> parts, Class<T> type) {
    return parts.stream().filter(type::isInstance).map(type::cast).toList();
  }

  /** How far a foot goes from its middle in one way [m]. */
  private record Reach(String way, double half, ToDoubleFunction<Spot> of) {}
}

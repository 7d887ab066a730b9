package rungwork.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.VarSnippet;

/**
 * Makes room again after a cell that filled the memory. What the cell itself defined goes first;
 * only if that does not help, the large values of earlier cells go too.
 */
final class FullMemory {
  /** A variable is large that holds this part of the heap. */
  private static final double MUCH = 0.05;

  /** Where more than this part of the heap is still taken, no later cell could do its work. */
  private static final double CRAMPED = 0.9;

  private final JShell shell;
  private final KeptControl control;
  private final HeapWatch watch;
  private final Reserve reserve;

  FullMemory(JShell shell, KeptControl control, HeapWatch watch, Reserve reserve) {
    this.shell = shell;
    this.control = control;
    this.watch = watch;
    this.reserve = reserve;
  }

  /**
   * What became of the variables.
   *
   * @param emptied those that are null now
   * @param large those that still hold much
   * @param enough whether there is room for another cell
   */
  record Relief(List<String> emptied, List<String> large, boolean enough) {}

  /** A variable, and about how much it holds. */
  private record Holder(VarSnippet variable, long bytes) {
    String text() {
      return "%s (about %d MiB)".formatted(variable.name(), bytes >> 20);
    }

    boolean isLarge() {
      return bytes > MUCH * Runtime.getRuntime().maxMemory();
    }
  }

  /** Keeps memory back for a cell that will need it. */
  void prepare() {
    reserve.take();
  }

  /** Gives up what was kept back: now it is needed. */
  void spend() {
    reserve.giveUp();
  }

  /**
   * Makes room.
   *
   * @param own the snippets of the cell that filled the memory
   */
  Relief relieve(List<Snippet> own) {
    spend();
    List<Holder> all = holders();
    Set<Snippet> mine = Set.copyOf(own);
    List<Holder> emptied = new ArrayList<>();
    empty(all.stream().filter(h -> mine.contains(h.variable()) && h.isLarge()).toList(), emptied);
    if (watch.settle() > CRAMPED) {
      empty(all.stream().filter(h -> mine.contains(h.variable()) || h.isLarge()).toList(), emptied);
    }
    List<Holder> left = all.stream().filter(h -> h.isLarge() && !emptied.contains(h)).toList();
    return new Relief(texts(emptied), texts(left), watch.settle() <= CRAMPED);
  }

  private List<Holder> holders() {
    return shell
        .variables()
        .filter(variable -> shell.status(variable) == Snippet.Status.VALID)
        .map(variable -> new Holder(variable, Long.parseLong(shell.varValue(variable))))
        .sorted(Comparator.comparingLong(Holder::bytes).reversed())
        .collect(Collectors.toList());
  }

  private void empty(List<Holder> these, List<Holder> emptied) {
    for (Holder each : these) {
      if (!emptied.contains(each) && control.empty(each.variable().name())) {
        emptied.add(each);
      }
    }
  }

  private static List<String> texts(List<Holder> holders) {
    return holders.stream().map(Holder::text).toList();
  }
}

package rungwork.kernel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.JShellException;

/** Words a cell's failure so that it points at the cell's line. */
final class FaultText {
  private static final String RED = "\u001b[1;31m";
  private static final String PLAIN = "\u001b[0m";
  private static final int FRAMES_SHOWN = 20;

  private final CellPlaces places;
  private final List<Class<? extends Throwable>> plainFaults;

  FaultText(CellPlaces places, List<Class<? extends Throwable>> plainFaults) {
    this.places = places;
    this.plainFaults = plainFaults;
  }

  /** A failure of the given kind and message, then further lines. */
  static CellOutput.Failure failure(String name, String message, List<String> more) {
    List<String> trace = new ArrayList<>();
    trace.add(RED + (message.isEmpty() ? name : name + ": " + message) + PLAIN);
    trace.addAll(more);
    return new CellOutput.Failure(name, message, trace);
  }

  /** The compiler's messages, each with the cell's line and a caret under the place. */
  CellOutput.Failure notCompiled(CellPlaces.Place place, List<CompileError> errors) {
    List<String> lines = new ArrayList<>();
    errors.forEach(error -> lines.addAll(error.pointed(place)));
    String first = errors.stream().findFirst().map(CompileError::summary).orElse("this is no Java");
    return failure("CompileError", first, lines);
  }

  /** What a snippet threw: the live Throwable says what, the shell's translation says where. */
  CellOutput.Failure thrown(Throwable live, JShellException translated) {
    Optional<Throwable> exit = cause(live, FaultText::endsTheProgram);
    List<String> where = frames(translated.getStackTrace());
    if (exit.isPresent()) {
      return failure("ExitRefused", "a cell cannot end the program; remove the call", first(where));
    }
    if (plainFaults.stream().anyMatch(type -> type.isInstance(live))) {
      List<String> trace = new ArrayList<>(List.of(RED + message(live) + PLAIN));
      trace.addAll(first(where));
      return new CellOutput.Failure(name(live), message(live), trace);
    }
    List<String> lines = new ArrayList<>(where);
    for (Throwable e = live.getCause(); e != null && lines.size() < 100; e = e.getCause()) {
      lines.add("caused by " + name(e) + ": " + message(e));
    }
    return failure(name(live), message(live), lines);
  }

  /** The cell's line alone. */
  List<String> line(JShellException translated) {
    return first(frames(translated.getStackTrace()));
  }

  /** How the memory came to its end. */
  enum Memory {
    /** One piece was asked for that it does not hold. */
    TOO_SMALL("the memory (%d MiB) does not hold this"),
    /** The cell took ever more. */
    FILLED("the cell filled the memory (%d MiB) and was stopped");

    private final String words;

    Memory(String words) {
      this.words = words;
    }
  }

  /** The memory is full; what the cells keep may be what fills it. */
  static CellOutput.Failure outOfMemory(Memory how, FullMemory.Relief relief, List<String> where) {
    StringBuilder message =
        new StringBuilder(how.words.formatted(Runtime.getRuntime().maxMemory() >> 20));
    if (!relief.enough()) {
      message.append(
          "; no room could be made: every name is lost, run the notebook from its first cell");
      return failure("Restart", message.toString(), where);
    }
    message.append("; names are kept");
    if (!relief.emptied().isEmpty()) {
      message.append(", but null now: ").append(String.join(", ", relief.emptied()));
    }
    if (!relief.large().isEmpty()) {
      message
          .append("; set what is large and no longer needed to null: ")
          .append(String.join(", ", relief.large()));
    }
    return failure("OutOfMemoryError", message.toString(), where);
  }

  private static boolean endsTheProgram(Throwable e) {
    return e instanceof NoSuchMethodError && message(e).contains(ExitCalls.MARK);
  }

  private static Optional<Throwable> cause(Throwable live, Predicate<Throwable> wanted) {
    return Stream.iterate(live, e -> e != null, Throwable::getCause)
        .limit(FRAMES_SHOWN)
        .filter(wanted)
        .findFirst();
  }

  private List<String> frames(StackTraceElement[] stack) {
    List<String> shown =
        Arrays.stream(stack).filter(FaultText::isUserLevel).map(this::frame).toList();
    if (shown.size() <= FRAMES_SHOWN) {
      return shown;
    }
    List<String> cut = new ArrayList<>(shown.subList(0, FRAMES_SHOWN));
    cut.add("    … and " + (shown.size() - FRAMES_SHOWN) + " more");
    return cut;
  }

  private static boolean isUserLevel(StackTraceElement frame) {
    String type = frame.getClassName();
    return !type.startsWith("jdk.internal.")
        && !type.startsWith("java.lang.reflect.")
        && !type.startsWith(ExitGuard.class.getName())
        && !type.startsWith("java.lang.invoke.");
  }

  private String frame(StackTraceElement frame) {
    String file = Optional.ofNullable(frame.getFileName()).orElse("");
    if (!file.startsWith("#")) {
      return library(frame);
    }
    String in = frame.getMethodName().isEmpty() ? "" : ", in " + frame.getMethodName();
    return places
        .of(file.substring(1))
        .map(
            place -> {
              int line = place.line(frame.getLineNumber());
              return "    cell [%d], line %d%s:  %s"
                  .formatted(place.cell().count(), line, in, place.text(line).strip());
            })
        .orElseGet(() -> library(frame));
  }

  private static String library(StackTraceElement frame) {
    String line = frame.getLineNumber() > 0 ? ", line " + frame.getLineNumber() : "";
    return "    " + frame.getClassName() + "." + frame.getMethodName() + line;
  }

  private static List<String> first(List<String> where) {
    return where.stream()
        .filter(line -> line.startsWith("    cell ["))
        .limit(1)
        .collect(Collectors.toList());
  }

  private static String name(Throwable e) {
    String simple = e.getClass().getSimpleName();
    return simple.isEmpty() ? e.getClass().getName() : simple;
  }

  private static String message(Throwable e) {
    try {
      return Optional.ofNullable(e.getMessage()).orElse("");
    } catch (RuntimeException broken) {
      return "(its message cannot be read: " + broken.getClass().getName() + ")";
    }
  }
}

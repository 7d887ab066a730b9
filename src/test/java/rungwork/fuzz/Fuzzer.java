package rungwork.fuzz;

import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.BaseStream;
import java.util.stream.Stream;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;

/** Calls entries with what {@link Draw} makes and keeps what they must not do. */
final class Fuzzer implements AutoCloseable {
  private static final Pattern KNOWN_NAMES =
      Pattern.compile("(?:there are|there is|it has|known are|by|of) ([^;]+)$");

  /**
   * Sums of what they are given, the quick way that a sweep asks checks, and a swing whose missing
   * end is no number by its own words: bad in, bad out.
   */
  private static final Set<String> PASSES_ON =
      Set.of(
          "Plane.toFrame(double, double, double)",
          "Plane.toVehicle(double, double, double)",
          "Segment.above(double)",
          "Arc.above(double)",
          "Line.above(double)",
          "Sensitivity.Swing(Input, double, double)",
          "MemberChecks.Numbers.utilisation(double[][], int[], Asked)");

  private final Map<Entry, List<String>> wanted = new HashMap<>();
  private final Pool pool;
  private final Draw draw;
  private final Random random;
  private final Map<Entry, Call> accepted = new HashMap<>();
  private final Map<String, Finding> findings = new LinkedHashMap<>();
  private final Map<Entry, String> uncalled = new LinkedHashMap<>();
  private final Watch watch = new Watch();

  Fuzzer(Pool pool, List<String> names, long seed) {
    this.pool = pool;
    this.random = new Random(seed);
    this.draw = new Draw(pool, random, names);
  }

  Collection<Finding> findings() {
    return findings.values();
  }

  /** Entries of the list that no value could be made for. */
  Collection<String> uncalled() {
    return new TreeSet<>(uncalled.values());
  }

  /** Calls each entry once with what a user might give. */
  void callWell(List<Entry> entries) {
    entries.forEach(entry -> prepared(entry, false).ifPresent(this::make));
  }

  /** Calls each entry once with something that nobody should give. */
  void callHostile(List<Entry> entries) {
    entries.forEach(entry -> prepared(entry, true).ifPresent(this::make));
  }

  private Optional<Call> prepared(Entry entry, boolean hostile) {
    try {
      draw.tookNull();
      draw.preferring(wanted.getOrDefault(entry, List.of()));
      Object receiver = entry.needsReceiver() ? draw.good(entry.owner()) : entry;
      Object[] arguments = hostile ? hostileArguments(entry) : goodArguments(entry);
      uncalled.remove(entry);
      boolean withNull = draw.tookNull();
      // A null may stay in a builder and be refused only later.
      return entry.needsReceiver() && withNull
          ? Optional.empty()
          : Optional.of(new Call(entry, receiver, arguments, hostile, withNull));
    } catch (Draw.Unknown unknown) {
      uncalled.put(entry, entry + ": " + unknown.getMessage());
      return Optional.empty();
    }
  }

  private Object[] goodArguments(Entry entry) {
    boolean again = entry.owner().isRecord() && !entry.needsReceiver() && random.nextBoolean();
    Optional<Object> known = again ? pool.any(entry.owner(), random) : Optional.empty();
    if (known.isPresent()
        && Arrays.equals(Rebuilt.types(known.get().getClass()), entry.parameters())) {
      return Reading.parts(known.get());
    }
    Object[] drawn = Arrays.stream(entry.parameters()).map(draw::good).toArray();
    if (random.nextBoolean()) {
      Amounts.fallingLengths(drawn);
    }
    return drawn;
  }

  /** All arguments hostile, or a good call with one of them changed. */
  private Object[] hostileArguments(Entry entry) {
    if (entry.parameters().length == 0 || random.nextInt(6) == 0) {
      return Arrays.stream(entry.parameters()).map(draw::hostile).toArray();
    }
    Call before = accepted.get(entry);
    Object[] arguments = before == null ? goodArguments(entry) : before.arguments().clone();
    int changed = random.nextInt(arguments.length);
    for (int i = 0; i < arguments.length; i++) {
      if (arguments[i] instanceof BaseStream<?, ?>) {
        arguments[i] = draw.good(entry.parameters()[i]);
      }
    }
    arguments[changed] = draw.hostile(entry.parameters()[changed]);
    return arguments;
  }

  private void make(Call call) {
    watch.starts();
    Object result = null;
    Throwable thrown = null;
    try {
      result = call.entry().call(call.receiver(), call.arguments());
    } catch (InvocationTargetException e) {
      thrown = e.getCause();
    }
    if (watch.ends()) {
      found(Finding.of(call, "takes too long"));
    } else if (thrown == null) {
      taken(call, result);
    } else {
      refused(call, thrown);
    }
  }

  private void taken(Call call, Object result) {
    if (!call.withNull() && (!call.hostile() || !accepted.containsKey(call.entry()))) {
      accepted.put(call.entry(), call);
    }
    if (call.entry().code() instanceof java.lang.reflect.Method method
        && method.getReturnType() == void.class) {
      return;
    }
    if (call.withNull()) {
      return;
    }
    Optional<String> fault = inspected(call, result);
    fault.ifPresent(what -> found(Finding.of(call, what)));
    if (fault.isEmpty()) {
      keep(result);
    }
  }

  private Optional<String> inspected(Call call, Object result) {
    try {
      Optional<String> fault = Inspection.fault(named(call.entry()), result);
      return fault.or(() -> Inspection.fault("toString", String.valueOf(result)));
    } catch (RuntimeException | StackOverflowError e) {
      return e instanceof ModelException || e instanceof SolveException
          ? Optional.empty()
          : Optional.of("its result throws " + where(e));
    }
  }

  private static String named(Entry entry) {
    return entry.owner().getSimpleName() + "." + entry.code().getName();
  }

  private void keep(Object result) {
    keep(result, 3);
  }

  private void keep(Object result, int deep) {
    parts(result)
        .filter(part -> part.getClass().getName().startsWith("rungwork."))
        .limit(6)
        .filter(part -> pool.wants(part) || random.nextInt(8) == 0)
        .forEach(part -> keepWhole(part, deep));
  }

  private void keepWhole(Object part, int deep) {
    pool.add(part, random);
    if (deep > 0 && part.getClass().isRecord()) {
      Arrays.stream(Reading.parts(part)).forEach(inner -> keep(inner, deep - 1));
    }
  }

  private static Stream<?> parts(Object result) {
    if (result instanceof Collection<?> all) {
      return all.stream();
    }
    if (result instanceof Optional<?> some) {
      return some.stream();
    }
    return Stream.of(result);
  }

  private void refused(Call call, Throwable thrown) {
    boolean ours = thrown instanceof ModelException || thrown instanceof SolveException;
    if (ours) {
      learn(call.entry(), String.valueOf(thrown.getMessage()));
      String message = String.valueOf(thrown.getMessage());
      if (message.isBlank()
          || !call.withNull() && message.matches("(?s).*\\b(null|NaN|Infinity)\\b.*")) {
        found(Finding.of(call, "says: " + message));
      }
    } else if (!(thrown instanceof NullPointerException && call.withNull()
        || thrown instanceof Draw.Unknown
        || isOfAnotherType(thrown))) {
      found(Finding.of(call, where(thrown)));
    }
  }

  /** What a compiler would have refused: a type variable stands for one class here. */
  private static boolean isOfAnotherType(Throwable thrown) {
    return thrown instanceof ClassCastException
        && thrown.getMessage().startsWith("class rungwork.vehicle.Assessment cannot be cast");
  }

  /** A refusal of an unknown name says which there are. */
  private void learn(Entry entry, String message) {
    Matcher known = KNOWN_NAMES.matcher(message);
    if (known.find()) {
      wanted.put(entry, List.of(known.group(1).split(", ")));
    }
  }

  private static String where(Throwable thrown) {
    String frame =
        Arrays.stream(thrown.getStackTrace())
            .map(StackTraceElement::toString)
            .filter(line -> line.startsWith("rungwork.") && !line.startsWith("rungwork.fuzz"))
            .findFirst()
            .orElse("");
    return thrown.getClass().getSimpleName() + " at " + frame + ": " + thrown.getMessage();
  }

  private void found(Finding finding) {
    if (PASSES_ON.contains(finding.entry().toString())) {
      return;
    }
    findings.putIfAbsent(finding.key(), finding);
  }

  @Override
  public void close() {
    watch.close();
  }
}

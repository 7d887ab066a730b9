package rungwork.kernel;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import jdk.jshell.execution.LocalExecutionControl;

/**
 * Runs snippets in this process and keeps the live value, or the live Throwable, of the last one.
 *
 * <p>The JDK's control runs a static method in a thread of its own, under its own stop mechanism,
 * and returns the value's text. Here it is handed {@link #perform} instead, which finds its work
 * through an inheritable thread local; so value and Throwable are kept while stopping stays the
 * JDK's.
 */
final class KeptControl extends LocalExecutionControl {
  private static final InheritableThreadLocal<Work> WORK = new InheritableThreadLocal<>();

  private static final long WAITS_WITHIN_NANOSECONDS = 1_000_000_000;

  private final Map<String, Field> measured = new HashMap<>();
  private Kept last = Kept.NOTHING;

  /** What is run, and what became of it. */
  private static final class Work {
    private final Call call;
    private final Thread waiter = Thread.currentThread();
    private volatile Kept kept = Kept.STOPPED;

    private Work(Call call) {
      this.call = call;
    }
  }

  /** A piece of work that may throw anything. */
  interface Call {
    Object call() throws Throwable;
  }

  KeptControl(CellLoader loader) {
    super(loader);
  }

  @Override
  public void load(ClassBytecodes[] classes)
      throws ClassInstallException, NotImplementedException, EngineTerminationException {
    super.load(disarmed(classes));
  }

  @Override
  public void redefine(ClassBytecodes[] classes)
      throws ClassInstallException, NotImplementedException, EngineTerminationException {
    super.redefine(disarmed(classes));
  }

  private static ClassBytecodes[] disarmed(ClassBytecodes[] classes) {
    return Stream.of(classes)
        .map(each -> new ClassBytecodes(each.name(), ExitCalls.disarm(each.bytecodes())))
        .toArray(ClassBytecodes[]::new);
  }

  @Override
  protected String invoke(Method snippet) throws Exception {
    return performed(() -> snippet.invoke(null));
  }

  /**
   * About how many bytes a variable holds; its text, which it may be too large for, is not made.
   * The variable can be emptied afterwards.
   */
  @Override
  public String varValue(String className, String name)
      throws RunException, EngineTerminationException, InternalException {
    try {
      Field field = findClass(className).getDeclaredField(name);
      field.setAccessible(true);
      measured.put(name, field);
      return Long.toString(HeldMemory.bytes(field.get(null)));
    } catch (ReflectiveOperationException e) {
      throw new InternalException(e.toString());
    }
  }

  /** Sets a variable that was measured to null; false if it holds no object. */
  boolean empty(String name) {
    Field field = measured.remove(name);
    try {
      if (field == null || field.getType().isPrimitive() || field.get(null) == null) {
        return false;
      }
      field.set(null, null);
      return true;
    } catch (IllegalAccessException closed) {
      return false;
    }
  }

  /** Runs other work just as a snippet is run, so that it can be stopped. */
  Kept run(Call call) {
    clientCodeEnter();
    try {
      performed(call);
    } catch (Exception e) {
      return last; // holds what was thrown
    } finally {
      clientCodeLeave();
    }
    return last;
  }

  private String performed(Call call) throws Exception {
    Work work = new Work(call);
    WORK.set(work);
    try {
      Method perform = KeptControl.class.getMethod("perform");
      perform.setAccessible(true);
      return super.invoke(perform);
    } finally {
      WORK.remove();
      last = work.kept;
    }
  }

  /** The static method that the JDK's control runs; it returns nothing that would need a text. */
  public static void perform() throws Throwable {
    Work work = WORK.get();
    letItWait(work.waiter);
    try {
      work.kept = new Kept.Value(work.call.call());
    } catch (InvocationTargetException e) {
      work.kept = Kept.thrown(e.getCause());
      throw e.getCause();
    } catch (Throwable e) {
      work.kept = Kept.thrown(e);
      throw e;
    }
  }

  /**
   * The JDK's control starts this thread, then waits for every thread that it finds in the group. A
   * thread that the snippet starts and leaves running must not be found, so the snippet begins only
   * when the control waits.
   */
  private static void letItWait(Thread waiter) {
    long latest = System.nanoTime() + WAITS_WITHIN_NANOSECONDS;
    while (waiter.getState() != Thread.State.WAITING && System.nanoTime() < latest) {
      Thread.onSpinWait();
    }
  }

  /** Forgets what was kept. */
  void forget() {
    last = Kept.NOTHING;
  }

  /** What became of the last snippet that ran. */
  Kept last() {
    return last;
  }
}

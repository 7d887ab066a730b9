package rungwork.kernel;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/** Stands between a cell and the methods by which it could end the program under another name. */
final class ExitGuard {
  /** The package of the classes that cells become. */
  private static final String CELLS = "REPL";

  private ExitGuard() {}

  /** Cells call these in place of the methods of the same name; rewritten bytecode alone does. */
  public static final class Calls {
    private Calls() {}

    /** In place of {@link Method#invoke}. */
    public static Object invoke(Method method, Object on, Object... arguments)
        throws IllegalAccessException, InvocationTargetException {
      refuse(method.getDeclaringClass(), method.getName());
      Optional<Method> guard =
          guard(method.getDeclaringClass(), method.getName(), method.getParameterTypes());
      if (guard.isPresent()) {
        return guard.get().invoke(null, with(on, arguments));
      }
      if (method.getDeclaringClass().getPackageName().equals(CELLS)) {
        method.setAccessible(true); // a cell may call its own private methods
      }
      return method.invoke(on, arguments);
    }

    /** In place of {@link MethodHandles.Lookup#findStatic}. */
    public static MethodHandle findStatic(
        MethodHandles.Lookup lookup, Class<?> in, String name, MethodType type)
        throws ReflectiveOperationException {
      refuse(in, name);
      return lookup.findStatic(in, name, type);
    }

    /** In place of {@link MethodHandles.Lookup#findVirtual}. */
    public static MethodHandle findVirtual(
        MethodHandles.Lookup lookup, Class<?> in, String name, MethodType type)
        throws ReflectiveOperationException {
      refuse(in, name);
      Optional<Method> guard = guard(in, name, type.parameterArray());
      return guard.isPresent()
          ? MethodHandles.lookup().unreflect(guard.get())
          : lookup.findVirtual(in, name, type);
    }

    /** In place of {@link MethodHandles.Lookup#bind}. */
    public static MethodHandle bind(
        MethodHandles.Lookup lookup, Object on, String name, MethodType type)
        throws ReflectiveOperationException {
      return findVirtual(lookup, on.getClass(), name, type).bindTo(on);
    }

    /** In place of {@link MethodHandles.Lookup#unreflect}. */
    public static MethodHandle unreflect(MethodHandles.Lookup lookup, Method method)
        throws ReflectiveOperationException {
      refuse(method.getDeclaringClass(), method.getName());
      Optional<Method> guard =
          guard(method.getDeclaringClass(), method.getName(), method.getParameterTypes());
      return guard.isPresent()
          ? MethodHandles.lookup().unreflect(guard.get())
          : lookup.unreflect(method);
    }
  }

  private static void refuse(Class<?> in, String name) {
    boolean ends = in == System.class || in == Runtime.class;
    if (ends && (name.equals("exit") || name.equals("halt"))) {
      throw new NoSuchMethodError(ExitCalls.MARK);
    }
  }

  /** The guard of a method, if it is one of those that call or find others. */
  private static Optional<Method> guard(Class<?> in, String name, Class<?>... parameters) {
    Class<?>[] types = Stream.concat(Stream.of(in), Stream.of(parameters)).toArray(Class<?>[]::new);
    return Stream.of(Calls.class.getMethods())
        .filter(each -> each.getName().equals(name))
        .filter(each -> Arrays.equals(each.getParameterTypes(), types))
        .findFirst();
  }

  private static Object[] with(Object on, Object[] arguments) {
    return Stream.concat(Stream.of(on), Stream.of(arguments)).toArray();
  }
}

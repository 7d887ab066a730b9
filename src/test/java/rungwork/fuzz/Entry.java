package rungwork.fuzz;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.stream.Collectors;

/** One public constructor or method. */
record Entry(Executable code) {
  boolean needsReceiver() {
    return code instanceof Method && !Modifier.isStatic(code.getModifiers());
  }

  Class<?> owner() {
    return code.getDeclaringClass();
  }

  Type[] parameters() {
    return code.getGenericParameterTypes();
  }

  Object call(Object receiver, Object[] arguments) throws InvocationTargetException {
    try {
      return code instanceof Method method
          ? method.invoke(receiver, arguments)
          : ((Constructor<?>) code).newInstance(arguments);
    } catch (IllegalAccessException | InstantiationException e) {
      throw new AssertionError(toString(), e);
    }
  }

  /** The room's name. */
  String room() {
    return owner().getPackageName().substring("rungwork.".length());
  }

  @Override
  public String toString() {
    String owner = owner().getName().substring(owner().getPackageName().length() + 1);
    String name = code instanceof Method ? "." + code.getName() : "";
    return owner.replace('$', '.')
        + name
        + Arrays.stream(code.getParameterTypes())
            .map(Class::getSimpleName)
            .collect(Collectors.joining(", ", "(", ")"));
  }
}

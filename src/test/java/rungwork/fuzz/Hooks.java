package rungwork.fuzz;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Proxy;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/** Functions that a user hands over, such as a design made from a study's setting. */
final class Hooks {
  private Hooks() {}

  /** Whether a type is an interface of one method, of the library or declared as such. */
  static boolean isHook(Class<?> type) {
    return type.isInterface()
        && !type.isSealed()
        && (type.getPackageName().equals("java.util.function")
            || type.getName().matches(".*\\$(Evaluation|Progress|Ground)"));
  }

  static boolean isNumeric(Class<?> type) {
    return type == ToDoubleFunction.class || type == ToDoubleBiFunction.class;
  }

  static Type result(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .filter(method -> Modifier.isAbstract(method.getModifiers()))
        .map(Method::getGenericReturnType)
        .findFirst()
        .orElseThrow();
  }

  static Object hook(Class<?> type, Supplier<Object> result, Consumer<Object> told) {
    InvocationHandler handler =
        (proxy, method, arguments) -> {
          if (method.isDefault()) {
            return InvocationHandler.invokeDefault(proxy, method, arguments);
          }
          if (method.getDeclaringClass() == Object.class) {
            return ofObject(proxy, method, arguments);
          }
          Arrays.stream(arguments == null ? new Object[0] : arguments).forEach(told);
          return method.getReturnType() == void.class ? null : result.get();
        };
    return Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler);
  }

  private static Object ofObject(Object proxy, Method method, Object[] arguments) {
    return switch (method.getName()) {
      case "equals" -> proxy == arguments[0];
      case "hashCode" -> System.identityHashCode(proxy);
      default -> "a function of the user";
    };
  }
}

package rungwork.notebook;

import io.github.spencerpark.jupyter.kernel.BaseKernel;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.kernel.display.Renderer;
import rungwork.kernel.DisplayRegistry;

/**
 * The screen of a Java kernel that is not this library's but stands on the same base: it is told
 * how each type shows, and then shows the last value of a cell in pictures by itself.
 */
final class OtherKernel implements Screen {
  private final BaseKernel kernel;

  /** Tells the kernel how the values of every type in the registry show. */
  OtherKernel(BaseKernel kernel, DisplayRegistry displays) {
    this.kernel = kernel;
    displays.types().forEach(type -> tell(kernel.getRenderer(), type, displays));
  }

  private static <T> void tell(Renderer renderer, Class<T> type, DisplayRegistry displays) {
    renderer
        .createRegistration(type)
        .register(
            (value, context) ->
                displays.bundle(value).forms().forEach(context.getOutputContainer()::putData));
  }

  @Override
  public void display(Object value) {
    kernel.display(rendered(value));
  }

  @Override
  public void display(Object value, String id) {
    DisplayData data = rendered(value);
    data.setDisplayId(id);
    kernel.display(data);
  }

  @Override
  public void update(Object value, String id) {
    kernel.getIO().display.updateDisplay(id, rendered(value));
  }

  private DisplayData rendered(Object value) {
    return kernel.getRenderer().render(value);
  }

  @Override
  public void clear() {
    // the base has no message for it
  }
}

package rungwork.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import io.github.spencerpark.jupyter.channels.ShellReplyEnvironment;
import io.github.spencerpark.jupyter.kernel.BaseKernel;
import io.github.spencerpark.jupyter.kernel.JupyterIO;
import io.github.spencerpark.jupyter.kernel.LanguageInfo;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import io.github.spencerpark.jupyter.messages.ContentType;
import io.github.spencerpark.jupyter.messages.publish.PublishDisplayData;
import io.github.spencerpark.jupyter.messages.publish.PublishUpdateDisplayData;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rungwork.material.Material;
import rungwork.quantity.Units;
import rungwork.report.SectionCard;
import rungwork.report.Shown;
import rungwork.section.Section;

/** Values in a Java kernel that is not this library's, down to the messages that it publishes. */
class OtherKernelTest {
  private static final Section TUBE = Section.squareTube(mm(50), mm(3));

  private final List<ContentType<?>> published = new ArrayList<>();
  private final BaseKernel kernel = new Guest();

  /** As any kernel on this base; a cell is running. */
  private final class Guest extends BaseKernel {
    private final JupyterIO io = new Attached();

    @Override
    public JupyterIO getIO() {
      return io;
    }

    @Override
    public void display(DisplayData data) {
      io.display.display(data);
    }

    @Override
    public DisplayData eval(String code) {
      throw new AssertionError("no cell runs in this test");
    }

    @Override
    public LanguageInfo getLanguageInfo() {
      return new LanguageInfo.Builder("Java").build();
    }
  }

  private final class Attached extends JupyterIO {
    Attached() {
      setEnv(new Messages());
    }
  }

  private final class Messages extends ShellReplyEnvironment {
    Messages() {
      super(null, null, null, null); // no sockets: nothing leaves this test
    }

    @Override
    public <T extends ContentType<T>> void publish(T content) {
      published.add(content);
    }
  }

  @BeforeEach
  void show() {
    Rungwork.showIn(kernel);
    Rungwork.start(Units.METRIC);
  }

  private static String form(DisplayData data, MIMEType type) {
    return data.getData(type).toString();
  }

  @Test
  void the_value_of_a_cell_shows_as_page_and_text() {
    DisplayData data = kernel.getRenderer().render(TUBE);
    assertTrue(form(data, MIMEType.TEXT_HTML).contains("<svg"), data::toString);
    assertTrue(form(data, MIMEType.TEXT_PLAIN).contains("5.408  cm²"), data::toString);
  }

  @Test
  void a_value_without_a_class_of_its_own_shows_too() {
    Shown card = SectionCard.of(TUBE, Material.rated("S355J2H"));
    DisplayData data = kernel.getRenderer().render(card);
    assertTrue(form(data, MIMEType.TEXT_HTML).contains("in S355J2H"), data::toString);
    assertEquals(card.page(Units.METRIC).text(), form(data, MIMEType.TEXT_PLAIN));
  }

  @Test
  void the_reader_s_units_hold() {
    Rungwork.start(Units.INCH_POUND);
    DisplayData data = kernel.getRenderer().render(TUBE);
    assertTrue(form(data, MIMEType.TEXT_PLAIN).contains("in²"), data::toString);
    assertEquals("1.969 in", form(kernel.getRenderer().render(mm(50)), MIMEType.TEXT_PLAIN));
  }

  @Test
  void what_the_library_does_not_know_shows_as_before() {
    DisplayData data = kernel.getRenderer().render(List.of(1, 2));
    assertEquals("[1, 2]", form(data, MIMEType.TEXT_PLAIN));
  }

  @Test
  void a_value_shows_in_the_middle_of_a_cell() {
    Rungwork.display(TUBE);
    DisplayData data = (PublishDisplayData) published.get(0);
    assertTrue(form(data, MIMEType.TEXT_HTML).contains("<svg"), data::toString);
    assertEquals(1, published.size());
  }

  @Test
  void a_value_shown_under_an_id_is_replaced() {
    Rungwork.display("wall", mm(3));
    Rungwork.update("wall", mm(4));
    PublishDisplayData first = (PublishDisplayData) published.get(0);
    PublishUpdateDisplayData then = (PublishUpdateDisplayData) published.get(1);
    assertEquals("wall", first.getDisplayId());
    assertEquals("wall", then.getDisplayId());
    assertEquals("3 mm", form(first, MIMEType.TEXT_PLAIN));
    assertEquals("4 mm", form(then, MIMEType.TEXT_PLAIN));
  }

  @Test
  void what_a_cell_has_put_out_stays() {
    Rungwork.display(mm(3));
    Rungwork.clearOutput();
    assertEquals(1, published.size());
  }
}

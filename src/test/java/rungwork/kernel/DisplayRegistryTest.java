package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DisplayRegistryTest {
  @Test
  void a_value_of_no_registered_type_shows_as_its_text() {
    assertEquals(Map.of("text/plain", "7"), DisplayRegistry.plain().bundle(7).forms());
  }

  @Test
  void the_nearest_registered_type_wins() {
    DisplayRegistry displays =
        DisplayRegistry.plain()
            .with(Object.class, value -> MimeBundle.text("object"))
            .with(Collection.class, value -> MimeBundle.text("collection"))
            .with(List.class, value -> MimeBundle.text("list"));
    assertEquals("list", displays.bundle(new ArrayList<>()).text());
    assertEquals("collection", displays.bundle(new HashSet<>()).text());
    assertEquals("object", displays.bundle(1.5).text());
  }

  @Test
  void a_larger_registry_leaves_the_smaller_as_it_was() {
    DisplayRegistry plain = DisplayRegistry.plain();
    plain.with(Integer.class, value -> MimeBundle.text("whole"));
    assertEquals("3", plain.bundle(3).text());
  }

  @Test
  void a_bundle_keeps_its_forms_in_order_and_needs_plain_text() {
    MimeBundle bundle = MimeBundle.text("t").html("<b>t</b>").svg("<svg/>");
    assertEquals(
        List.of("text/plain", "text/html", "image/svg+xml"), List.copyOf(bundle.forms().keySet()));
    assertThrows(
        IllegalArgumentException.class, () -> new MimeBundle(Map.of("text/html", "<b>t</b>")));
  }
}

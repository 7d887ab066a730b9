package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungwork.solve.CriticalCount.Trial;

/** Critical loads below a factor: of members between held nodes, and of the frame's matrix. */
class CriticalCountTest {
  @Test
  void all_critical_loads_below_are_counted() {
    assertEquals(5, new Trial(2, 3, 0).count());
    assertEquals(0, new Trial(0, 0, 0).count());
  }

  @Test
  void only_one_of_the_frame_alone_is_simple() {
    assertTrue(new Trial(0, 1, 0).isSimple());
    assertFalse(new Trial(1, 0, 0).isSimple(), "one, but of a member");
    assertFalse(new Trial(1, 1, 0).isSimple());
    assertFalse(new Trial(0, 2, 0).isSimple());
    assertFalse(new Trial(0, 0, 0).isSimple());
  }
}

package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HeldMemoryTest {
  private static final double MEBI = 1 << 20;

  private static void about(double mebibytes, Object held) {
    assertEquals(mebibytes, HeldMemory.bytes(held) / MEBI, 0.1 * mebibytes);
  }

  @Test
  void arrays_count_by_their_elements() {
    about(8, new long[1 << 20]);
    about(4, new int[1 << 20]);
    about(1, new byte[1 << 20]);
    about(8, new double[8][1 << 17]);
  }

  @Test
  void collections_count_by_their_first_elements() {
    about(10, new ArrayList<>(Collections.nCopies(10, new byte[1 << 20])));
    about(4, Arrays.asList(new int[1 << 19], new int[1 << 19]));
    about(6, Map.of(1, new byte[3 << 20]));
    about(2, List.of("x".repeat(1 << 21)));
  }

  @Test
  void objects_of_other_types_are_small_pieces_and_null_is_none() {
    assertEquals(16, HeldMemory.bytes(new Object()));
    assertEquals(16, HeldMemory.bytes(null));
  }

  @Test
  void a_list_in_itself_is_no_trouble() {
    List<Object> list = new ArrayList<>();
    list.add(list);
    assertEquals(16 + 4 + 16 + 4 + 16 + 4 + 16, HeldMemory.bytes(list));
  }
}

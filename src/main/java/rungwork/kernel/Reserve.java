package rungwork.kernel;

/**
 * Memory that is kept back while cells run. A cell that fills the memory leaves its names behind,
 * and with them a full heap in which not even the statement that drops them could be compiled; the
 * reserve is given up then and taken again once there is room.
 */
final class Reserve {
  private static final int PART_OF_HEAP = 16;
  private static final int LARGEST = 32 << 20;

  private byte[] held = new byte[0];

  /** Takes the reserve if there is room for it. */
  synchronized void take() {
    if (held.length > 0) {
      return;
    }
    try {
      held = new byte[(int) Math.min(Runtime.getRuntime().maxMemory() / PART_OF_HEAP, LARGEST)];
    } catch (OutOfMemoryError still) {
      held = new byte[0];
    }
  }

  /** Gives the reserve up to whoever needs memory now. */
  synchronized void giveUp() {
    held = new byte[0];
  }
}

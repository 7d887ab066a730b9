package rungwork.frame;

import rungwork.fault.Guard;

/**
 * A named place of the frame where beams meet, loads act or supports hold.
 *
 * @param name unique in its frame
 * @param at its place in vehicle axes
 */
public record Node(String name, Point at) {
  /** Refuses a node without a name. */
  public Node {
    name = Guard.name("node", name);
  }
}

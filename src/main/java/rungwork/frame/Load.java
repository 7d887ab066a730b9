package rungwork.frame;

import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * Something that loads the frame: forces in vehicle axes, and what strains it without a force.
 * Forces on a beam act on its line of centroids, between its ends.
 */
public sealed interface Load {
  /**
   * A wrench at a node.
   *
   * @param node name of the node
   * @param wrench force [N] and moment [N·m] in vehicle axes
   */
  record AtNode(String node, Wrench wrench) implements Load {
    /** Refuses a component that is not finite. */
    public AtNode {
      node = Guard.name("loaded node", node);
    }
  }

  /**
   * A wrench at a point of a beam.
   *
   * @param beam name of the beam
   * @param from distance from the beam's start [m], not below zero and not beyond its end
   * @param wrench force [N] and moment [N·m] in vehicle axes
   */
  record OnBeam(String beam, double from, Wrench wrench) implements Load {
    /** Refuses a component that is not finite, and a place before the start. */
    public OnBeam {
      beam = Guard.name("loaded beam", beam);
      Guard.notNegative("place of the load on beam " + beam, from, Scale.MM);
    }
  }

  /**
   * A uniform force along the whole of a beam.
   *
   * @param beam name of the beam
   * @param wx forward [N/m]
   * @param wy to the left [N/m]
   * @param wz up [N/m]
   */
  record AlongBeam(String beam, double wx, double wy, double wz) implements Load {
    /** Refuses a component that is not finite. */
    public AlongBeam {
      beam = Guard.name("loaded beam", beam);
      Guard.finite("load along beam " + beam, wx + wy + wz);
    }
  }

  /**
   * A force along a part of a beam that varies linearly from one end of the part to the other.
   *
   * @param beam name of the beam
   * @param from distance of the part's first end from the beam's start [m], not below zero
   * @param to distance of its other end [m], beyond {@code from} and not beyond the beam's end
   * @param first force per length at its first end
   * @param last force per length at its other end
   */
  record AlongPart(String beam, double from, double to, PerMetre first, PerMetre last)
      implements Load {
    /** Refuses a part without a length, or before the start. */
    public AlongPart {
      beam = Guard.name("loaded beam", beam);
      Guard.notNegative("first end of the load along beam " + beam, from, Scale.MM);
      if (!(Guard.finite("other end of the load along beam " + beam, to) > from)) {
        throw new ModelException(
            "the load along beam %s runs from %s to %s; let it end beyond its first end"
                .formatted(beam, Scale.MM.show(from), Scale.MM.show(to)));
      }
    }

    /**
     * A force of the same size everywhere along a part of a beam.
     *
     * @param beam name of the beam
     * @param from distance of the part's first end from the beam's start [m]
     * @param to distance of its other end [m]
     * @param force per length
     * @return the load
     */
    public static AlongPart uniform(String beam, double from, double to, PerMetre force) {
      return new AlongPart(beam, from, to, force, force);
    }
  }

  /**
   * Force per length.
   *
   * @param wx forward [N/m]
   * @param wy to the left [N/m]
   * @param wz up [N/m]
   */
  record PerMetre(double wx, double wy, double wz) {
    /** None. */
    public static final PerMetre NONE = new PerMetre(0, 0, 0);

    /** Refuses a component that is not finite. */
    public PerMetre {
      Guard.finite("force per length", wx + wy + wz);
    }
  }

  /**
   * A beam that becomes warmer. Along the beam the temperature is everywhere the same; over the
   * section it varies linearly: T = rise + acrossY·y + acrossZ·z, in the beam's axes from the
   * centroid.
   *
   * @param beam name of the beam
   * @param expansion of its material by warmth [1/K]: 12e-6 for steel (EN 1993-1-1, 3.2.6), 23e-6
   *     for aluminium (EN 1999-1-1, 3.2.5), both from memory
   * @param rise at the line of centroids [K]
   * @param acrossY difference of temperature over the depth along the beam's y [K/m]
   * @param acrossZ difference of temperature over the depth along the beam's z [K/m]
   */
  record Warmth(String beam, double expansion, double rise, double acrossY, double acrossZ)
      implements Load {
    private static final Scale KELVIN = new Scale("K", 1);
    private static final Scale PER_METRE = new Scale("K/m", 1);

    /** Refuses a component that is not finite, and a material that shrinks when warmed. */
    public Warmth {
      beam = Guard.name("warmed beam", beam);
      Guard.notNegative("expansion of beam " + beam, expansion, Scale.NUMBER);
      Guard.finite("warmth of beam " + beam, rise + acrossY + acrossZ);
    }

    /**
     * The same rise over the whole section.
     *
     * @param beam name of the beam
     * @param expansion of its material by warmth [1/K]
     * @param rise of its temperature [K]
     * @return the load
     */
    public static Warmth uniform(String beam, double expansion, double rise) {
      return new Warmth(beam, expansion, rise, 0, 0);
    }

    @Override
    public String toString() {
      return "beam %s warmed by %s, across y by %s, across z by %s"
          .formatted(beam, KELVIN.show(rise), PER_METRE.show(acrossY), PER_METRE.show(acrossZ));
    }
  }

  /**
   * A beam that does not fit: made too long, twisted or bowed, and forced into its place.
   *
   * @param beam name of the beam
   * @param tooLong how much longer than the distance between its ends [m]
   * @param twisted turn of its end about x against its start [rad]
   * @param bowY how far its middle stands off its chord along y, as an arc [m]
   * @param bowZ how far its middle stands off its chord along z, as an arc [m]
   */
  record Misfit(String beam, double tooLong, double twisted, double bowY, double bowZ)
      implements Load {
    private static final Scale TURN = new Scale("mrad", 1e-3);

    /** Refuses a component that is not finite. */
    public Misfit {
      beam = Guard.name("misfitting beam", beam);
      Guard.finite("misfit of beam " + beam, tooLong + twisted + bowY + bowZ);
    }

    @Override
    public String toString() {
      return "beam %s made %s too long, twisted by %s, bowed by %s along y and %s along z"
          .formatted(
              beam,
              Scale.MM.show(tooLong),
              TURN.show(twisted),
              Scale.MM.show(bowY),
              Scale.MM.show(bowZ));
    }
  }

  /**
   * A support that is moved: the node goes along where it is held; where a spring holds it, the
   * spring's foot is moved.
   *
   * @param node name of the supported node
   * @param motion which of its motions, held or sprung
   * @param amount how far, in vehicle axes [m] or [rad]
   */
  record Settlement(String node, Freedom motion, double amount) implements Load {
    private static final Scale TURN = new Scale("mrad", 1e-3);

    /** Refuses an amount that is not finite. */
    public Settlement {
      node = Guard.name("settling node", node);
      Guard.finite("settlement of node " + node, amount);
    }

    @Override
    public String toString() {
      boolean moving = motion.ordinal() < Freedom.RX.ordinal();
      return "support at node %s settles, %s by %s"
          .formatted(node, motion.motion(), (moving ? Scale.MM : TURN).show(amount));
    }
  }
}

package rungwork.frame;

import rungwork.fault.Guard;

/** Something that loads the frame, in vehicle axes. */
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
      String what = "load at node " + node;
      Guard.finite(what, wrench.fx() + wrench.fy() + wrench.fz());
      Guard.finite(what, wrench.mx() + wrench.my() + wrench.mz());
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
}

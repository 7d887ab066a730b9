package rungwork.solve;

import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Wrench;

/** Load cases as forces on nodes alone: what acts along a beam acts at its ends, by statics. */
final class NodalLoads {
  /** A load that ends this close to a beam's end goes along the whole of it [1]: rounding. */
  private static final double ROUNDING = 1e-9;

  private final Structure structure;

  NodalLoads(Structure structure) {
    this.structure = structure;
  }

  /** The case in forces and moments on all nodes, in frame axes. */
  double[] of(LoadCase loadCase) {
    double[] nodal = new double[structure.motions()];
    for (Load load : loadCase.loads()) {
      if (load instanceof Load.AtNode atNode) {
        add(nodal, atNode.node(), atNode.wrench());
      } else if (load instanceof Load.AlongBeam along) {
        Load.PerMetre same = new Load.PerMetre(along.wx(), along.wy(), along.wz());
        addAtEnds(nodal, along.beam(), same, same);
      } else if (load instanceof Load.AlongPart part && wholeBeam(part)) {
        addAtEnds(nodal, part.beam(), part.first(), part.last());
      } else {
        throw new ModelException(
            "load case %s has a load that a pushover cannot follow; it takes wrenches at nodes and loads along whole beams"
                .formatted(loadCase.name()));
      }
    }
    return nodal;
  }

  private boolean wholeBeam(Load.AlongPart part) {
    double length = length(part.beam());
    return part.from() == 0 && Math.abs(part.to() - length) <= ROUNDING * length;
  }

  private double length(String beam) {
    return structure.members().get(structure.member(beam)).length();
  }

  /** The reactions of a beam on its ends: L (2 w₁ + w₂)/6 and L (w₁ + 2 w₂)/6. */
  private void addAtEnds(double[] nodal, String name, Load.PerMetre first, Load.PerMetre last) {
    Beam beam = structure.frame().beam(name);
    double sixth = length(name) / 6;
    add(nodal, beam.start(), force(first, 2 * sixth).plus(force(last, sixth)));
    add(nodal, beam.end(), force(first, sixth).plus(force(last, 2 * sixth)));
  }

  private static Wrench force(Load.PerMetre load, double length) {
    return Wrench.force(load.wx() * length, load.wy() * length, load.wz() * length);
  }

  private void add(double[] nodal, String node, Wrench wrench) {
    double[] forces = structure.frame().plane().toFrame(wrench);
    int first = 6 * structure.node(node);
    for (int i = 0; i < 6; i++) {
      nodal[first + i] += forces[i];
    }
  }
}

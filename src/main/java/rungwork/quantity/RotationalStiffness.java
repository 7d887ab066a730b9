package rungwork.quantity;

import javax.measure.Quantity;

/** Moment for an angle; SI unit N·m/rad. */
public interface RotationalStiffness extends Quantity<RotationalStiffness> {}

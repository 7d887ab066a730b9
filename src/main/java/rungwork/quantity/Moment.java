package rungwork.quantity;

import javax.measure.Quantity;

/** Moment or torque; SI unit N·m. Not an energy, though the dimensions agree. */
public interface Moment extends Quantity<Moment> {}

package rungwork.quantity;

import javax.measure.Quantity;

/** Force for a displacement; SI unit N/m. */
public interface Stiffness extends Quantity<Stiffness> {}

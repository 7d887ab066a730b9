package rungwork.quantity;

import javax.measure.Quantity;

/** Mass moment of inertia; SI unit kg·m². */
public interface MomentOfInertia extends Quantity<MomentOfInertia> {}

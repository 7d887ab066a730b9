package rungwork.quantity;

import javax.measure.Quantity;

/** Second moment of area or torsion constant; SI unit m⁴. */
public interface SecondMoment extends Quantity<SecondMoment> {}

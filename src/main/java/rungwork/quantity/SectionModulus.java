package rungwork.quantity;

import javax.measure.Quantity;

/** Elastic or plastic section modulus; SI unit m³. */
public interface SectionModulus extends Quantity<SectionModulus> {}

package rungwork.quantity;

import javax.measure.Quantity;

/** Mass in a volume; SI unit kg/m³. */
public interface Density extends Quantity<Density> {}

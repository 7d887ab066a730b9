package rungwork.quantity;

import javax.measure.Quantity;

/** Force on a length; SI unit N/m. */
public interface LineLoad extends Quantity<LineLoad> {}

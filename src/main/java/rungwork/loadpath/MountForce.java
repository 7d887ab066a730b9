package rungwork.loadpath;

import rungwork.frame.Wrench;
import rungwork.vehicle.Mount;

/**
 * What a suspension pushes on one mount.
 *
 * @param mount the mount
 * @param loadCase the load case's name, with what was assumed where two pivots share a thrust
 * @param wrench force on the mount in vehicle axes, at its point
 */
public record MountForce(Mount mount, String loadCase, Wrench wrench) {}

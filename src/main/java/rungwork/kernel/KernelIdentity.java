package rungwork.kernel;

/**
 * How a kernel introduces itself.
 *
 * @param name of the implementation
 * @param version of the implementation
 * @param banner a line that consoles show when they begin
 */
public record KernelIdentity(String name, String version, String banner) {}

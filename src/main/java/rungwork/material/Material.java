package rungwork.material;

/**
 * What a member is made of. Its stiffness is always known; its strength only if somebody guarantees
 * it: {@link RatedMaterial} has one, {@link UnratedMaterial} refuses to give one.
 */
public sealed interface Material permits RatedMaterial, UnratedMaterial {
  /**
   * The grade's name.
   *
   * @return for example {@code S355J2H}
   */
  String name();

  /**
   * Stiffness and density.
   *
   * @return the elastic constants
   */
  Elasticity elasticity();

  /**
   * Where the figures come from.
   *
   * @return the source
   */
  Source source();
}

package rungwork.solve;

/**
 * Bending across a member in one plane: where its motions and forces stand in a state, and how a
 * normal force changes them. In the plane a turn is a slope, out of it a slope turned round; there
 * turn and moment carry the other sign.
 *
 * <pre>
 *   M′ = −V + N·w′     EI·ψ′ = M     w′ = β(ψ + V/GA)     β = 1/(1 + N/GA)     λ = βN/EI
 * </pre>
 *
 * <p>V acts across the line that the start points along, w is measured from that line. (Beam-column
 * equation; Timoshenko and Gere, Theory of Elastic Stability, 1961, from memory.)
 */
enum Across {
  /** In the plane: v, θz, Vy, Mz. */
  IN_PLANE(1, 2),
  /** Out of the plane: w, θy, Vz, My. */
  OUT_OF_PLANE(-1, 4);

  private final int sign;
  private final int firstDeformation;

  Across(int sign, int firstDeformation) {
    this.sign = sign;
    this.firstDeformation = firstDeformation;
  }

  /** The deformation that is the turn of the start; the end's follows. */
  int firstDeformation() {
    return firstDeformation;
  }

  /** 1 where a turn is a slope, −1 where it is a slope turned round. */
  int sign() {
    return sign;
  }

  /** Where the deflection stands in a state. */
  int deflection() {
    return this == IN_PLANE ? Span.V : Span.W;
  }

  /** Where the turn of the cross-section stands in a state. */
  int turn() {
    return this == IN_PLANE ? Span.TURN_Z : Span.TURN_Y;
  }

  /** Where the shear force stands in a state. */
  int shear() {
    return this == IN_PLANE ? Span.VY : Span.VZ;
  }

  /** Where the moment stands in a state. */
  int moment() {
    return this == IN_PLANE ? Span.MZ : Span.MY;
  }

  /** EI and GA. */
  StabilityFunctions.Bending bending(Member member) {
    return member.rigidity().bending(this);
  }

  /** Takes deflection, turn and moment out of a state. */
  void clear(double[] state) {
    state[deflection()] = 0;
    state[turn()] = 0;
    state[moment()] = 0;
  }

  /** Adds what a curvature without a force makes from the start on. */
  void addCurvature(double[] state, double curvature, double x, Member member) {
    double[] s = powers(0, x, member);
    double slope = bending(member).slope(member.normalForce(this));
    state[turn()] += curvature * s[1];
    state[deflection()] += sign * slope * curvature * s[2];
    state[moment()] += slope * member.normalForce(this) * curvature * s[2];
  }

  /**
   * Adds what a load makes from its place on.
   *
   * @param load how it begins: force and moment, and the order of {@link Term}
   * @param h distance from its place [m]
   */
  void add(double[] state, Load load, double h, Member member) {
    StabilityFunctions.Bending bending = bending(member);
    double slope = bending.slope(member.normalForce(this));
    double[] s = powers(load.order, h, member);
    double sheared = load.order == 0 ? h : load.order == 1 ? h * h / 2 : h * h * h / 6;
    double force = slope * load.force;
    double moment = sign * load.moment;
    double bent = slope * (force * s[3] - moment * s[2]) / bending.rigidity();
    state[deflection()] += bent - force * sheared * bending.give();
    state[turn()] += sign * (force * s[2] - moment * s[1]) / bending.rigidity();
    state[moment()] += sign * (force * s[1] - moment * s[0]);
  }

  /** The slope of the bent axis, w′ [rad]. */
  double slope(double[] state, Member member) {
    StabilityFunctions.Bending bending = bending(member);
    double turned = sign * state[turn()];
    return bending.slope(member.normalForce(this)) * (turned + state[shear()] * bending.give());
  }

  /** The shear force across the bent axis, V − N·w′: the one that makes M′. */
  double shearAcross(double[] state, Member member) {
    if (member.normalForce(this) == 0) {
      return state[shear()];
    }
    double slope = bending(member).slope(member.normalForce(this));
    return slope * (state[shear()] - member.normalForce(this) * sign * state[turn()]);
  }

  /**
   * How fast {@link #shearAcross} grows: −β(q + N·ψ′), ψ′ = M/EI + the curvature without a force.
   *
   * @param load q where the state is [N/m]
   * @param curvature that the member would take by itself [1/m]
   */
  double shearGrowth(double load, double curvature, double[] state, Member member) {
    StabilityFunctions.Bending bending = bending(member);
    double curved = state[moment()] / bending.rigidity() + curvature;
    return -bending.slope(member.normalForce(this))
        * (load + sign * member.normalForce(this) * curved);
  }

  /**
   * What the node does to the start across the line that the start points along.
   *
   * @param across what it does across the member's own axis [N]
   * @param turned turn of the start [rad]
   */
  double shearAtStart(double across, double turned, Member member) {
    return across + member.normalForce(this) * sign * turned;
  }

  /** hⁿCₙ(λh²) and its next three integrals, which without a normal force are hⁿ/n! and so on. */
  private double[] powers(int order, double h, Member member) {
    double[] c = Stumpff.of(bending(member).growth(member.normalForce(this)) * h * h);
    double[] s = new double[4];
    double power = Math.pow(h, order);
    for (int k = 0; k < s.length; k++) {
      s[k] = power * c[order + k];
      power *= h;
    }
    return s;
  }

  /**
   * The part of a {@link Term} that acts across the member.
   *
   * @param order how it begins
   * @param force along y or z
   * @param moment about z or y
   */
  record Load(int order, double force, double moment) {}
}

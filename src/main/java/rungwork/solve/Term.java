package rungwork.solve;

/**
 * A part of what acts along a member, from one place on: a point wrench (order 0), a line load that
 * starts there and stays (order 1), or one that grows from nothing (order 2). To the internal
 * forces it adds −load·⟨x − a⟩ⁿ/n!, and the same integrated once more for each step from shear to
 * moment, slope and deflection (Macaulay, Note on the deflection of beams, 1919, from memory):
 *
 * <pre>
 *   N, Vy, Vz, T ← −load        Mz ← −∫Vy − moment          My ← +∫Vz − moment
 *   u ← ∫N/EA    φx ← ∫T/GJ     θz ← ∫Mz/EIz                θy ← ∫My/EIy
 *                               v ← ∫(θz + Vy/GAy)          w ← ∫(−θy + Vz/GAz)
 * </pre>
 *
 * @param from a, where it begins, as a fraction of the length [1]
 * @param order n
 * @param load along x, y, z, then about x (on the line of shear centres), y, z: [N] and [N·m] for
 *     order 0, per metre for order 1, per square metre for order 2; moments only for order 0,
 *     torque for all
 */
record Term(double from, int order, double[] load) {
  /** Adds what it does to the internal forces at a fraction of the length, see {@link Span}. */
  void addForces(double[] state, double fraction, double length) {
    if (fraction < from) {
      return;
    }
    double h = (fraction - from) * length;
    double p0 = power(h);
    double p1 = p0 * h / (order + 1);
    state[Span.N] -= load[0] * p0;
    state[Span.VY] -= load[1] * p0;
    state[Span.VZ] -= load[2] * p0;
    state[Span.T] -= load[3] * p0;
    state[Span.MY] -= load[2] * p1 + load[4] * p0;
    state[Span.MZ] += load[1] * p1 - load[5] * p0;
  }

  /** Adds what it does to the motions at a fraction of the length. */
  void addMotions(double[] state, double fraction, Member member) {
    if (fraction < from) {
      return;
    }
    double h = (fraction - from) * member.length();
    double p1 = power(h) * h / (order + 1);
    double p2 = p1 * h / (order + 2);
    double p3 = p2 * h / (order + 3);
    Member.Rigidity r = member.rigidity();
    state[Span.U] -= load[0] * p1 / r.stretching();
    state[Span.TURN_X] -= load[3] * p1 / r.twisting();
    state[Span.V] += (load[1] * p3 - load[5] * p2) / r.bendingZ() - load[1] * p1 / r.shearingY();
    state[Span.TURN_Z] += (load[1] * p2 - load[5] * p1) / r.bendingZ();
    state[Span.W] += (load[2] * p3 + load[4] * p2) / r.bendingY() - load[2] * p1 / r.shearingZ();
    state[Span.TURN_Y] -= (load[2] * p2 + load[4] * p1) / r.bendingY();
  }

  /** Adds deflections, turns and moments in a member under a normal force. */
  void addAcross(double[] state, double fraction, Member member) {
    if (fraction >= from) {
      double h = (fraction - from) * member.length();
      Across.IN_PLANE.add(state, new Across.Load(order, load[1], load[5]), h, member);
      Across.OUT_OF_PLANE.add(state, new Across.Load(order, load[2], load[4]), h, member);
    }
  }

  /** hⁿ/n!. */
  private double power(double h) {
    return order == 0 ? 1 : order == 1 ? h : h * h / 2;
  }

  /** The load per metre at a fraction of the length along an axis, 0 to 3; none of a point load. */
  double perMetre(int axis, double fraction, double length) {
    if (order == 0 || fraction < from) {
      return 0;
    }
    return order == 1 ? load[axis] : load[axis] * (fraction - from) * length;
  }

  /** How much the load per metre grows each metre along an axis, 0 to 3. */
  double growth(int axis, double fraction) {
    return order == 2 && fraction >= from ? load[axis] : 0;
  }
}

package rungwork.solve;

/**
 * The ends of a member between which loads act: what holds them, and what the nodes do to them.
 *
 * @param member the member
 */
record HeldEnds(Member member) {

  /**
   * The forces that hold the deformations at zero, the ends stiff: those at the start for which the
   * end comes to rest too.
   *
   * @param free the state at its end when the start is at rest and free, as from {@link Span#at}
   * @return a force for each deformation
   */
  double[] clamped(double[] free) {
    double[] forces = new double[Member.DEFORMATIONS];
    forces[0] = free[Span.N] - member.rigidity().stretching() / member.length() * free[Span.U];
    forces[1] = free[Span.T] - member.rigidity().twisting() / member.length() * free[Span.TURN_X];
    for (Across across : Across.values()) {
      hold(forces, free, across);
    }
    return forces;
  }

  /**
   * Clamped moments in one plane: deflection and turn of the end vanish by M and V at the start.
   */
  private void hold(double[] forces, double[] free, Across across) {
    int w = across.deflection();
    int turn = across.turn();
    double[] byMoment = byStart(across.moment());
    double[] byShear = byStart(across.shear());
    double det = byMoment[w] * byShear[turn] - byMoment[turn] * byShear[w];
    double moment = (free[turn] * byShear[w] - free[w] * byShear[turn]) / det;
    double shear = (free[w] * byMoment[turn] - free[turn] * byMoment[w]) / det;
    int m = across.moment();
    forces[across.firstDeformation()] = -moment;
    forces[across.firstDeformation() + 1] = free[m] + moment * byMoment[m] + shear * byShear[m];
  }

  /** The state at the end by a unit internal force at the start, which is at rest. */
  private double[] byStart(int force) {
    double[] start = new double[6];
    start[force - Span.N] = -1;
    return Span.EMPTY.startingWith(start).at(1, member);
  }

  /**
   * What the nodes do to the ends, by equilibrium of the member, its chord not turned.
   *
   * @param s a force for each deformation
   * @param free as for {@link #clamped}
   * @return 12 forces in the member's own axes; force and torque about the line of shear centres
   */
  double[] forces(double[] s, double[] free) {
    double momentZ = free[Span.MZ] - member.normalForce(Across.IN_PLANE) * free[Span.V];
    double momentY = free[Span.MY] + member.normalForce(Across.OUT_OF_PLANE) * free[Span.W];
    double shearY = (momentZ - s[2] - s[3]) / member.length();
    double shearZ = (s[4] + s[5] - momentY) / member.length();
    return new double[] {
      free[Span.N] - s[0],
      -shearY,
      -shearZ,
      free[Span.T] - s[1],
      s[4],
      s[2],
      s[0],
      shearY + free[Span.VY],
      shearZ + free[Span.VZ],
      s[1],
      s[5],
      s[3]
    };
  }

  /**
   * Adds what the normal force does across the member when its chord turns: a couple that turns it
   * back in tension and on in compression.
   *
   * @param ends as from {@link #forces}, added to
   * @param chords turns of the chord about z and about y
   */
  void turnChord(double[] ends, double[] chords) {
    ends[1] -= member.normalForce(Across.IN_PLANE) * chords[0];
    ends[7] += member.normalForce(Across.IN_PLANE) * chords[0];
    ends[2] += member.normalForce(Across.OUT_OF_PLANE) * chords[1];
    ends[8] -= member.normalForce(Across.OUT_OF_PLANE) * chords[1];
  }
}

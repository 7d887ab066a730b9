package rungwork.impact;

/**
 * What acts between two masses on one line. The rear one comes up to the front one; {@code closing}
 * is by how much, counted from where the run begins.
 */
sealed interface Link permits Link.Crush, Link.Spring {
  /** The number of what does not move: a wall. */
  int GROUND = -1;

  /** The mass in front, or {@link #GROUND}. */
  int front();

  /** The mass behind. */
  int rear();

  /** The force that holds the rear mass back [N]; {@code rate} is how fast it closes [m/s]. */
  double force(double closing, double rate, double most);

  /** What is in it [J], given the most that it was closed so far. */
  double energy(double closing, double most);

  /** How far it is closed by two masses' places [m]. */
  default double closing(double[] places) {
    return places[rear()] - (front() == GROUND ? 0 : places[front()]);
  }

  /**
   * A part that is crushed and only pushes.
   *
   * @param curve its force over crush
   * @param gap closed before it touches [m]
   * @param damping force for its speed [N·s/m]; takes hold over the first millimetre
   */
  record Crush(int front, int rear, CrushCurve curve, double gap, double damping) implements Link {
    private static final double TAKES_HOLD = 1e-3;

    Crush(int front, int rear, CrushCurve curve, double gap) {
      this(front, rear, curve, gap, 0);
    }

    @Override
    public double force(double closing, double rate, double most) {
      double crush = closing - gap;
      double spring = curve.force(crush, Math.max(0, most - gap));
      double hold = damping == 0 ? 0 : Math.max(0, Math.min(1, crush / TAKES_HOLD));
      return Math.max(0, spring + hold * damping * rate);
    }

    @Override
    public double energy(double closing, double most) {
      return curve.energy(Math.max(0, closing - gap), Math.max(0, most - gap));
    }

    /** Where it lets go once it was closed that far. */
    double release(double most) {
      double crush = Math.max(0, most - gap);
      return gap + crush - curve.force(crush) / curve.unloading();
    }
  }

  /**
   * A linear spring that pushes and pulls.
   *
   * @param stiffness [N/m]
   */
  record Spring(int front, int rear, double stiffness) implements Link {
    @Override
    public double force(double closing, double rate, double most) {
      return stiffness * closing;
    }

    @Override
    public double energy(double closing, double most) {
      return stiffness * closing * closing / 2;
    }
  }
}

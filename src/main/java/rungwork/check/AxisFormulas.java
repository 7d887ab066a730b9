package rungwork.check;

import java.util.List;
import rungwork.quantity.Kind;

/**
 * The formulas of a compressed and bent member that are written once for each of its two axes, the
 * letters numbered by the axis. Buckling by bending: EN 1993-1-1:2005, 6.3.1 (eq. 6.49 and 6.50 and
 * table 6.1 from memory, checked against published values). With bending: 6.3.3 with annex B
 * (method 2; from memory), class 3 column of table B.1, Cm = 1.
 */
final class AxisFormulas {
  private static final Symbol COMPRESSION =
      new Symbol("N", Kind.FORCE, "largest compression along the part, counted positive");
  private static final String COMPARISON =
      "J. B. Johnson and Euler, as in Budynas & Nisbett, Shigley's Mechanical Engineering Design,"
          + " ch. 4; for comparison only: it knows no imperfection";

  /** Euler's force, of E, I and Lcr. */
  final Formula critical;

  /** Relative slenderness, of A, fy and Ncr. */
  final Formula slenderness;

  /** Φ, of α and the relative slenderness. */
  final Formula phi;

  /** Reduction factor, of Φ and the relative slenderness. */
  final Formula chi;

  /** Johnson's parabola, of A, fy and the relative slenderness. */
  final Formula parabola;

  /** Euler's force beyond the parabola, of A, fy and the relative slenderness. */
  final Formula beyond;

  /** Share of the column's resistance that the force takes, of γ, N, χ and Npl. */
  final Formula share;

  /** Share of the bending resistance that the moment takes, of γ, M, W and fy. */
  final Formula bending;

  /** Growth of the moment under the force, of the relative slenderness and the share. */
  final Formula growth;

  private final Symbol bar;
  private final Symbol chiLetter;

  AxisFormulas(String index) {
    Symbol ncr = new Symbol("Ncr" + index, Kind.FORCE, "elastic critical force");
    Symbol phiLetter = new Symbol("Φ" + index, Kind.RATIO, "value to determine χ");
    bar = new Symbol("λ̄" + index, Kind.RATIO, "relative slenderness");
    chiLetter = new Symbol("χ" + index, Kind.RATIO, "reduction factor for buckling");
    critical = critical(ncr, index);
    slenderness =
        new Formula(
            bar,
            "√({A}·{fy}/{%s})".formatted(ncr.letter()),
            List.of(Letters.A, Letters.FY, ncr),
            "EN 1993-1-1:2005, eq. 6.50",
            in -> Math.sqrt(in[0] * in[1] / in[2]));
    phi = phi(phiLetter);
    chi = chi(phiLetter);
    Symbol johnson = new Symbol("NJ" + index, Kind.FORCE, "force without imperfection");
    parabola = comparison(johnson, "{A}·{fy}·(1 − {%s}²/4)", in -> 1 - in[2] * in[2] / 4);
    beyond = comparison(johnson, "{A}·{fy}/{%s}²", in -> 1 / (in[2] * in[2]));
    share = share(index);
    bending = bending(index);
    growth = growth(index);
  }

  private static Formula critical(Symbol ncr, String index) {
    Symbol i = new Symbol("I" + index, Kind.SECOND_MOMENT, "second moment of area");
    Symbol l = new Symbol("Lcr" + index, Kind.LENGTH, "effective length");
    return new Formula(
        ncr,
        "π²·{E}·{%s}/{%s}²".formatted(i.letter(), l.letter()),
        List.of(Letters.E, i, l),
        "Euler 1757; EN 1993-1-1:2005, 6.3.1.2(1)",
        in -> Math.PI * Math.PI * in[0] * in[1] / (in[2] * in[2]));
  }

  private Formula phi(Symbol result) {
    return new Formula(
        result,
        "0.5·(1 + {α}·({%1$s} − 0.2) + {%1$s}²)".formatted(bar.letter()),
        List.of(Letters.ALPHA, bar),
        "EN 1993-1-1:2005, 6.3.1.2(1); α of the curve from table 6.1",
        in -> 0.5 * (1 + in[0] * (in[1] - 0.2) + in[1] * in[1]));
  }

  private Formula chi(Symbol phiLetter) {
    return new Formula(
        chiLetter,
        "min(1, 1/({%1$s} + √({%1$s}² − {%2$s}²)))".formatted(phiLetter.letter(), bar.letter()),
        List.of(phiLetter, bar),
        "EN 1993-1-1:2005, eq. 6.49",
        in -> Math.min(1, 1 / (in[0] + Math.sqrt(Math.max(0, in[0] * in[0] - in[1] * in[1])))));
  }

  private Formula comparison(Symbol result, String text, Formula.Evaluation partOfSquash) {
    return new Formula(
        result,
        text.formatted(bar.letter()),
        List.of(Letters.A, Letters.FY, bar),
        COMPARISON,
        in -> in[0] * in[1] * partOfSquash.of(in));
  }

  private Formula share(String index) {
    return new Formula(
        new Symbol("n" + index, Kind.RATIO, "share of the column's resistance"),
        "{γ}·{N}/({%s}·{Npl})".formatted(chiLetter.letter()),
        List.of(Letters.GAMMA, COMPRESSION, chiLetter, Letters.SQUASH),
        "EN 1993-1-1:2005, 6.3.3(4), first term; γM1 = 1.0",
        in -> in[0] * in[1] / (in[2] * in[3]));
  }

  private static Formula bending(String index) {
    Symbol moment = new Symbol("M" + index, Kind.MOMENT, "largest moment along the part");
    Symbol modulus = new Symbol("W" + index, Kind.SECTION_MODULUS, "elastic section modulus");
    return new Formula(
        new Symbol("m" + index, Kind.RATIO, "share of the bending resistance"),
        "{γ}·{%s}/({%s}·{fy})".formatted(moment.letter(), modulus.letter()),
        List.of(Letters.GAMMA, moment, modulus, Letters.FY),
        "EN 1993-1-1:2005, 6.3.3(4), moment terms; γM1 = 1.0",
        in -> in[0] * in[1] / (in[2] * in[3]));
  }

  private Formula growth(String index) {
    Symbol part = new Symbol("n" + index, Kind.RATIO, "share of the column's resistance");
    return new Formula(
        new Symbol("k" + index, Kind.RATIO, "growth of the moment under the force"),
        "1 + 0.6·min(1, {%s})·{%s}".formatted(bar.letter(), part.letter()),
        List.of(bar, part),
        "EN 1993-1-1:2005, table B.1, class 3, with Cm = 1",
        in -> 1 + 0.6 * Math.min(1, in[0]) * in[1]);
  }
}

package rungwork.check;

import java.util.List;
import rungwork.material.RatedMaterial;

/** One kind of check of a loaded member. */
interface Question {
  /** What is checked, such as {@code combined stress}. */
  String what();

  /** What it guards against. */
  LimitState limitState();

  /** Whether the load case asks this of the member at all. */
  boolean arises(LoadedMember member);

  /** The answers; asked only where the question arises. */
  List<Finding> ask(LoadedMember member, RatedMaterial material);
}

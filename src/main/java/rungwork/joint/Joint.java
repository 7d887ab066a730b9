package rungwork.joint;

import java.util.List;
import rungwork.check.Check;

/** Something that holds a part to the frame and can be asked what a load does to it. */
public interface Joint {
  /**
   * Its name, as its maker calls it.
   *
   * @return such as {@code inner tab}
   */
  String name();

  /**
   * Every question that this joint answers about a load.
   *
   * @param load the load, in the face's axes
   * @return one check a question, in no particular order
   */
  List<Check> checks(FaceLoad load);
}

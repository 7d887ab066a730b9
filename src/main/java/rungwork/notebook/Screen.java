package rungwork.notebook;

import rungwork.kernel.Evaluator;

/** Where the values of a session show. */
interface Screen {
  /** Nowhere but in print: a program outside any notebook. */
  Screen PRINTED =
      new Screen() {
        @Override
        public void display(Object value) {
          System.out.println(value);
        }

        @Override
        public void display(Object value, String id) {
          System.out.println(value);
        }

        @Override
        public void update(Object value, String id) {
          System.out.println(value);
        }

        @Override
        public void clear() {
          // what is printed stays
        }
      };

  /** Shows a value here. */
  void display(Object value);

  /** Shows a value here, under an id. */
  void display(Object value, String id);

  /** Replaces what was shown under an id. */
  void update(Object value, String id);

  /** Takes away what the running cell has put out so far, where that can be done. */
  void clear();

  /** Among the outputs of the cell that asks for it. */
  static Screen of(Evaluator cells) {
    return new Screen() {
      @Override
      public void display(Object value) {
        cells.display(value);
      }

      @Override
      public void display(Object value, String id) {
        cells.display(value, id);
      }

      @Override
      public void update(Object value, String id) {
        cells.update(value, id);
      }

      @Override
      public void clear() {
        cells.clear();
      }
    };
  }
}

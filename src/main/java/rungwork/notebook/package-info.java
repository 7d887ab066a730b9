/**
 * Where the rooms are put together: which values show how, what every cell sees, what pages look
 * like, and the command line.
 *
 * <p>Conventions. A notebook's first cell holds its imports and {@code Rungwork.start()}, harmless
 * when repeated. {@link rungwork.notebook.Rungwork} keeps the running session (the reader's units,
 * where displayed values and files go), the only state of the library that is not passed from hand
 * to hand. {@code Screen} is where values show: in cells of this library's kernel, in {@code
 * OtherKernel}, or in print. {@code Composition} makes every choice that other rooms leave open.
 * {@link rungwork.notebook.Main} alone decides the program's exit status: 0 only when every cell of
 * every notebook ran, 1 when one failed, 2 when the command was not understood.
 *
 * <p>Reading order: {@code Rungwork}, {@code Composition}, {@code Commands} with {@code
 * Installation}, {@code Main}.
 *
 * <p>This room may know every other; no other may know it.
 */
package rungwork.notebook;

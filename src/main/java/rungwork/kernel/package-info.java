/**
 * Java cells, in Jupyter and without it. Nothing here knows what the cells are about; the room
 * could be lifted out whole.
 *
 * <pre>
 *   Jupyter client  --messages--&gt;  KernelServer --.
 *                                                  &gt;--  Evaluator  --&gt;  CellOutput, in order
 *   NAME.ipynb  ------------&gt;  NotebookRunner  --'
 * </pre>
 *
 * <p>Conventions. A cell is Java text; its last expression is shown unless a semicolon ends it.
 * Values are shown by the {@link rungwork.kernel.DisplayRegistry} in several forms, plain text
 * always among them. Whatever a cell does, it ends as a {@link rungwork.kernel.CellEnd} and nothing
 * that it throws leaves the evaluator: a process that lives on without answering would be worse
 * than one that ends. Errors name the cell by its count, and its line. A cell cannot end the
 * program.
 *
 * <p>Reading order: {@link rungwork.kernel.MimeBundle}, {@link rungwork.kernel.DisplayRegistry},
 * {@link rungwork.kernel.CellOutput}, {@link rungwork.kernel.Evaluator} with {@code CellRun},
 * {@code SessionStart}, {@code KeptControl}, {@code ExitCalls} and {@code HeapWatch} behind it,
 * {@link rungwork.kernel.CodeHelp} with {@code SourceDocs} behind it; then {@link
 * rungwork.kernel.NotebookRunner}; then {@link rungwork.kernel.KernelServer} with {@code Wire} and
 * {@code Requests} behind it, and {@link rungwork.kernel.KernelSpec} with {@code JupyterFolders},
 * {@code ClassCopy}, {@code ClassArchive} and {@code Rehearsal} behind it.
 *
 * <p>Sources: the Jupyter messaging protocol 5.3 and the notebook format 4.5 as documented by
 * Project Jupyter; the JDK's {@code jdk.jshell} documentation.
 *
 * <p>This room must not know any other room of this project.
 */
package rungwork.kernel;

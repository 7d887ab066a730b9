/**
 * Comma-separated files: tables that people bring, and tables that they carry away.
 *
 * <pre>
 *   rack.csv  --  CsvFile.read  --  rows: text, number        a mistake is refused as
 *                                                             rack.csv line 3, wall_mm: "3O" is not a number
 *   CsvLines  --  words(…), number(…)  --  "part,mass [kg]"   no word becomes a formula in a spreadsheet
 * </pre>
 *
 * <p>Both ways RFC 4180 in UTF-8: commas between cells, points in numbers, the first line names the
 * columns. A line is counted from 1, as editors and spreadsheets do, and is the one that a row
 * begins on. Rows in which nothing stands are passed over; every other oddity is refused: a row
 * that is too short or too long, two columns of one name, another encoding, semicolons, quotation
 * marks that do not match, numbers that are no plain decimals.
 *
 * <p>Reading order: {@link rungwork.csv.CsvFile}, {@link rungwork.csv.CsvRow}, {@link
 * rungwork.csv.CsvLines}.
 *
 * <p>This room knows only {@code rungwork.fault}: neither what a column means nor in which unit.
 */
package rungwork.csv;

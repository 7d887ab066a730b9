/**
 * Outside checks: what others print against what Rungwork computes.
 *
 * <p>A check reads {@code Published.read("EN 10219-2:2006, table", "60×40×3").value("A", "cm²",
 * "5.41", area * 1e4)}. The expected value is a string, because its last printed digit decides the
 * tolerance: half a unit of it. A wider tolerance needs {@link
 * rungwork.validation.Published#allowing} and a reason, which then stands beside the source.
 *
 * <p>Every check asserts and is recorded, failed ones too. At the end of a test run the rows are in
 * {@code target/validation.csv}; {@code mvn verify} then asks {@link
 * rungwork.validation.ValidationGate} whether there are enough of them and whether {@code
 * docs/validation.md} lists them. {@code mvn verify -Dvalidation.write=true} writes that page anew.
 *
 * <p>Reading order: {@link rungwork.validation.Published}, {@link rungwork.validation.Row}, {@link
 * rungwork.validation.ValidationTable}, {@link rungwork.validation.ValidationPage}, {@link
 * rungwork.validation.ValidationGate}.
 */
package rungwork.validation;

/** Tests of the documents. */
@org.jspecify.annotations.NullMarked
package hingewise.report;

/** Tests of the commands, run within the test's own process. */
@org.jspecify.annotations.NullMarked
package hingewise.terminal;

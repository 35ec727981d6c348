/**
 * Fuzzing: programs and sheets made of the fuzzer's bytes, and what must hold for every answer.
 * {@link flankfit.fuzz.FuzzMain} starts a target; what was found lies as text among the test
 * resources and is replayed by every build.
 */
package flankfit.fuzz;

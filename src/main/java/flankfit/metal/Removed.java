package flankfit.metal;

/**
 * What one tool took away in a run of moves without a change of tool.
 *
 * @param tool number of the tool
 * @param from index of its first move that takes metal away
 * @param to index after its last
 * @param volume volume taken away (mm³)
 */
public record Removed(int tool, int from, int to, double volume) {}

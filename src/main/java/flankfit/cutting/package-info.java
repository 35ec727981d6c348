/**
 * Chip, force and bending of a thread mill on a helix: what each row takes when it meets the metal
 * that earlier passes really left, how far that pushes the mill off its path, and what a spring
 * pass still gains. Mean forces of a steady turn; no chatter, no run-out. No force coefficient
 * measured in thread milling could be read, so every force is an estimate good to about 30 %.
 */
package flankfit.cutting;

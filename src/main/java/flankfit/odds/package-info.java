/**
 * How sure a verdict is, and what to key in after a gauge was tried: the odds over the tolerances
 * of mill, hole, machine and forces; what observations make believe of the mill; its trend over a
 * batch.
 */
package flankfit.odds;

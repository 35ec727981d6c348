/**
 * Text of a milling program to blocks of words, after ISO 6983-1 and EIA RS-274-D. Reads bytes
 * directly; knows characters, numbers, comments, sequence and program numbers, block delete and
 * percent lines, but no function and no machine. Reports the findings of the family RD.
 */
package flankfit.nc;

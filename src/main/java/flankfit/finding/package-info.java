/** What a finding is, where it points, every code there is, and the collector of all phases. */
package flankfit.finding;

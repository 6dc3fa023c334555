/** The rules of the architecture as tests. A rule and the page that describes it change in the same commit. */
package cablewright.architecture;

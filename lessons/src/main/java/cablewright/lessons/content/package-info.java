/** The lessons that come with the program, each a resource in the published format. */
package cablewright.lessons.content;

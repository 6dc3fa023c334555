/**
 * How each type of value is read from JSON and written to it. A record is an object with a field for each component; a
 * sealed family says in its field "kind" which record it is; what a record's constructor refuses is a problem of the file.
 */
package cablewright.lessons.format.codec;

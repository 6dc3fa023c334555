/**
 * The files: cables, exercises, lessons and attempts as JSON, each with its kind and version, unknown fields refused,
 * written in one canonical form. The published schemas are resources of this package,
 * made from the records by PublishedSchemaTest.
 */
package cablewright.lessons.format;

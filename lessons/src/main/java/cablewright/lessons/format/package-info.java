/**
 * The files: cables, exercises, lessons and attempts as JSON, each with its kind and version, unknown fields refused,
 * written in one canonical form. The published schemas are resources of this package.
 */
package cablewright.lessons.format;

/** Plates in the kinds of file that machines read, written to a stream. */
package dev.quoin.format;

/** Reads a run back and proves it. May not import format. */
package dev.quoin.verify;

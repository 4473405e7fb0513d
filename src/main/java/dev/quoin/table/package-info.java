/** A CSV file as rows with places, whatever its encoding and separator; and the one CSV writer. */
package dev.quoin.table;

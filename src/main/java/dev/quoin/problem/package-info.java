/** Problems as values with a place, and their collector. Imports nothing of Quoin; every package may import it. */
package dev.quoin.problem;

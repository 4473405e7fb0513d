/** What the workshop has: lenses, machine, recipes, blanks, materials, jigs; and the readers of their tables. */
package dev.quoin.shop;

/** Templates, compiled once; merged with an item they give its artwork: marks in item coordinates, by process. */
package dev.quoin.art;

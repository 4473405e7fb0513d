/** The customer's order: its rows, and the items they stand for. */
package dev.quoin.order;

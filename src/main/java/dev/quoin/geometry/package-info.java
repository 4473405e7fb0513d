/**
 * Points, boxes, moves and paths in millimetres, and the one number formatter. Imports nothing of Quoin. All values are
 * immutable. The y axis has no direction here: each stage says its own.
 */
package dev.quoin.geometry;

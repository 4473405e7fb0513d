/**
 * Bar codes and matrix codes as areas. Takes a content and a rectangle in mm, gives closed outlines or the reason why there
 * are none. Quiet zones and check digits are seen to; the quality of the mark on the piece is not graded.
 */
package dev.quoin.code;

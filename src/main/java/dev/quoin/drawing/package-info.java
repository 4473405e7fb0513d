/**
 * An SVG file, safely loaded with the places of its elements, as shapes and texts in our own terms. Item coordinates:
 * mm, the origin at the page's centre, x right, y up. Batik does the drawing work here, and no type of it leaves.
 */
package dev.quoin.drawing;

/** Fonts, and text set in them as outlines, fitted to its space. */
package dev.quoin.lettering;

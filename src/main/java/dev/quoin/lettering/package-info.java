/**
 * Fonts, and text set in them as outlines, fitted to its space. Takes strings and requests for fonts, gives paths in ems
 * or millimetres with y up. What a user's text or font gets wrong comes back as a value or a problem. The only package
 * that touches the platform's fonts.
 */
package dev.quoin.lettering;

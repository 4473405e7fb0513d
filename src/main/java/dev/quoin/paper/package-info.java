/**
 * The papers: plain view records laid into templates, written piece by piece to a writer of the caller. Every figure
 * arrives in a view; nothing is worked out here but where it stands on the page. Templates, style and script lie beside
 * the classes as resources and are written into each paper, which needs nothing from anywhere else.
 */
package dev.quoin.paper;

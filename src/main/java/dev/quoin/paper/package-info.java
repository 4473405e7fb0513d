/** The papers: plain view records laid into templates. Never works out a figure itself. */
package dev.quoin.paper;
